/** Public: every page of the library. */
export const data = {
  pagination: { data: 'publicPaths', size: 1, alias: 'path' },
  permalink: ({ path }) => `public/${path}`,
};

export function render({ path, publicPages, library, assets }) {
  return publicPages.get(path)(library.get('view'), assets);
}
