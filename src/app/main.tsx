/** The entry: real store, real clock, real ids; the page; the worker that keeps it offline. */
import '@fontsource/barlow-semi-condensed/latin-500.css';
import '@fontsource/barlow-semi-condensed/latin-700.css';
import '../ui/look.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { hasNames } from '../storage/learners/databases.ts';
import { App } from './App.tsx';
import { Boundary } from './Boundary.tsx';
import { deviceServices } from './device-services.ts';
import { Gate } from './Gate.tsx';
import { keepOffline } from './keep-offline.ts';
import { languageInUse } from './language.ts';
import { openWords } from './load-words.ts';

// Whose device this is decides whose answers are opened: asked before anything else.
const names = hasNames();
const words = openWords(languageInUse());
document.documentElement.lang = words.language;
const services = deviceServices(words);
await words.loadAll();

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <Boundary say={services.sayFor(null)}>
      <Gate services={services} names={names}>
        <App />
      </Gate>
    </Boundary>
  </StrictMode>,
);

keepOffline();
