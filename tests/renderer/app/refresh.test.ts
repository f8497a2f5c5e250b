import { QueryObserver } from '@tanstack/react-query'
import { describe, expect, it } from 'vitest'
import { queryClient } from '../../../renderer/app/query-client.ts'
import { refreshAfter } from '../../../renderer/app/refresh.ts'

describe('refreshAfter', () => {
  it('forgets what other rooms showed, and waits for what is on the screen', async () => {
    let answers = 0
    const observer = new QueryObserver(queryClient, {
      queryKey: ['bench.read', { id: 'bw_1' }],
      queryFn: () => Promise.resolve(++answers),
    })
    const leave = observer.subscribe(() => undefined)
    await observer.refetch()
    const before = answers
    queryClient.setQueryData(['bench.list', { state: 'under-way' }], 'as it was')
    queryClient.setQueryData(['tags.print', {}], 'of another topic')

    await refreshAfter('bench.keep')

    expect(queryClient.getQueryData(['bench.list', { state: 'under-way' }])).toBeUndefined()
    expect(queryClient.getQueryData(['tags.print', {}])).toBe('of another topic')
    expect(observer.getCurrentResult().data).toBe(before + 1)
    leave()
    queryClient.clear()
  })
})
