const dish = (id: string) => `/api/dishes/${encodeURIComponent(id)}`

/** Addresses of the server, relative to where the page came from. */
export const paths = {
  health: '/api/health',
  dishes: '/api/dishes',
  putAway: '/api/dishes?putAway=true',
  dish,
  draft: (id: string) => `${dish(id)}/draft`,
  revisions: (id: string) => `${dish(id)}/revisions`,
  revision: (id: string, number: number) => `${dish(id)}/revisions/${number}`,
} as const
