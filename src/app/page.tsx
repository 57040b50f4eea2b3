/** The page: real store, real clock, real ids; the question of a drill under way is in the first picture. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { Boundary } from './Boundary.tsx';
import { drillUnderWay, namesHere } from './beginning.ts';
import { deviceServices } from './device-services.ts';
import { firstQuestion } from './first-question.ts';
import { Gate } from './Gate.tsx';
import { words } from './words-in-use.ts';

export async function openPage(): Promise<void> {
  const services = deviceServices(words);
  const [names, peeked] = await Promise.all([namesHere, drillUnderWay]);
  // Whose device this is decides whose answers are opened.
  const first = peeked && names.ok && !names.value ? await firstQuestion(services, peeked) : undefined;
  createRoot(document.getElementById('page')!).render(
    <StrictMode>
      <Boundary say={services.sayFor(null)}>
        <Gate services={services} names={names}>
          <App first={first} />
        </Gate>
      </Boundary>
    </StrictMode>,
  );
}
