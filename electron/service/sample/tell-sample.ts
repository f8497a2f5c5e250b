import type { Circumstances } from '../perform.ts'
import type { View } from '../store/view.ts'

export async function tellSample(_view: View, _today: string, _c: Circumstances): Promise<void> {}
