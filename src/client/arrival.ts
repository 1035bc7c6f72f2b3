/**
 * What runs in the head of a sheet, before its body is read. One plain script without imports, like `leaflet.ts`.
 */
(() => {
  // Light or dark as it was chosen on this device, before anything is drawn.
  try {
    const chosen = localStorage.getItem('loadleaf:theme');
    if (chosen === 'light' || chosen === 'dark') document.documentElement.dataset['theme'] = chosen;
  } catch {
    // Storage is denied: as the device has it.
  }

  // Decoded while the body is still being read, the faces are there when the first words are drawn: in their own
  // letters, and once.
  for (const face of document.fonts) void face.load();

  // Opened at its top, a sheet shows its top first and the rest in the frame after it; `leaflet.ts` leads the mark on. Who
  // comes back to a place further down, or follows an address to one, needs the heights above it at once.
  const [arrival] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  if (arrival?.type === 'navigate' && location.hash === '')
    document.documentElement.dataset['arriving'] = 'reading';
})();
