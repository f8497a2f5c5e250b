import { useEffect, useState } from 'react'
import type { Refusal } from '../../../../../shared-core/refusal.ts'
import type { Result } from '../../../../../shared-core/result.ts'
import type { FileBytes } from '../../../../app/files.ts'
import { type DecodedPicture, decodePicture } from './decode-picture.ts'

/** A file as pixels; `undefined` while it is being decoded. */
export function useDecoded(
  file: FileBytes,
  { exact }: Readonly<{ exact: boolean }>,
): Result<DecodedPicture, Refusal> | undefined {
  const [decoded, setDecoded] = useState<Result<DecodedPicture, Refusal>>()
  useEffect(() => {
    let isWanted = true
    setDecoded(undefined)
    void decodePicture(file, { exact }).then((read) => {
      if (isWanted) setDecoded(read)
    })
    return () => {
      isWanted = false
    }
  }, [file, exact])
  return decoded
}
