/** The least that React puts on a page, kept offline as Detent is: what first-question.ts measures against. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <h1 className="prompt">Empty</h1>
  </StrictMode>,
);
window.addEventListener('load', () => void navigator.serviceWorker.register('./sw.js'));
