import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { Button } from '../../../ui/button.tsx'
import { Notice } from '../../../ui/notice.tsx'
import type { DesignDetail } from '../page/open-design.ts'
import type { Draft } from './use-draft.ts'

/** Said when a version was saved elsewhere while something unsaved lay here: nothing is lost either way. */
export function BehindNotice({
  draft,
  design: { version, body },
}: Readonly<{ draft: Draft; design: DesignDetail }>) {
  return (
    <Notice
      kind="attention"
      title={`Version ${version} was saved elsewhere since`}
      actions={
        <Button small onClick={() => draft.change(`Version ${version}`, body as DesignBody)}>
          {`Take version ${version}`}
        </Button>
      }
    >
      What lies here is drawn on an older version. Saving it makes it the newest; taking the other
      can be undone.
    </Notice>
  )
}
