/**
 * The entry: real store, real clock, real ids; the page; the worker that keeps it offline. A drill under way is
 * looked for while its words are on their way, so that its question is in the first picture.
 */
import '@fontsource/barlow-semi-condensed/latin-500.css';
import '@fontsource/barlow-semi-condensed/latin-700.css';
import '../ui/look.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { hasNames } from '../storage/learners/databases.ts';
import { App } from './App.tsx';
import { Boundary } from './Boundary.tsx';
import { deviceServices } from './device-services.ts';
import { firstQuestion } from './first-question.ts';
import { Gate } from './Gate.tsx';
import { keepOffline } from './keep-offline.ts';
import { words } from './later.ts';

async function open() {
  const services = deviceServices(words);
  const [names, found] = await Promise.all([
    // Whose device this is decides whose answers are opened.
    hasNames(),
    window.location.hash === '#/drill' ? firstQuestion(services) : undefined,
    words.loadDrill(),
  ]);
  createRoot(document.getElementById('page')!).render(
    <StrictMode>
      <Boundary say={services.sayFor(null)}>
        <Gate services={services} names={names}>
          <App first={names.ok && !names.value ? found : undefined} />
        </Gate>
      </Boundary>
    </StrictMode>,
  );
}

document.documentElement.lang = words.language;
void open();
keepOffline();
