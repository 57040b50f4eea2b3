/** The page: real store, real clock, real ids; the question of a drill under way is in the first picture. */
import { StrictMode, Suspense, useEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { whenPainted } from '../screens/when-painted.ts';
import { App } from './App.tsx';
import { Boundary } from './Boundary.tsx';
import { drillUnderWay, namesHere } from './beginning.ts';
import { deviceServices } from './device-services.ts';
import { firstQuestion } from './first-question.ts';
import { Gate } from './Gate.tsx';
import { newVersion } from './new-version.ts';
import { words } from './words-in-use.ts';

/** The way to open without a network can wait until the page is seen; words that did not come are tried again with one. */
function Afterwards() {
  useEffect(() => {
    void whenPainted().then(newVersion.begin);
    // Where they do not come, the page says so once it needs them.
    const loadWords = () => void words.loadDrill().catch(() => {});
    window.addEventListener('online', loadWords);
    return () => window.removeEventListener('online', loadWords);
  }, []);
  return null;
}

export async function openPage(): Promise<void> {
  const services = deviceServices(words);
  const [names, peeked] = await Promise.all([namesHere, drillUnderWay]);
  // Whose device this is decides whose answers are opened.
  const isFree = names.ok && !names.value;
  // Whatever stands in its way, the page opens the usual way.
  const first = peeked && isFree ? await firstQuestion(services, peeked).catch(() => undefined) : undefined;
  createRoot(document.getElementById('page')!).render(
    <StrictMode>
      <Boundary say={services.sayFor(null)} language={words.language}>
        <Suspense fallback={null}>
          <Gate services={services} names={names}>
            <App first={first} />
          </Gate>
        </Suspense>
      </Boundary>
      <Afterwards />
    </StrictMode>,
  );
}
