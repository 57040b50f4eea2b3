/** Resolves when what is on the page by now was painted; a page in the background has no frames. */
export const whenPainted = () =>
  new Promise<void>((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 300);
  });
