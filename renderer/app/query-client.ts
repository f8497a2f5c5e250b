import { QueryClient } from '@tanstack/react-query'

/** What the screens have read. Kept until an act changes it: the store is on this machine and has one writer. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      gcTime: 5 * 60_000,
      retry: false,
      networkMode: 'always',
      refetchOnWindowFocus: false,
    },
    mutations: { retry: false, networkMode: 'always' },
  },
})
