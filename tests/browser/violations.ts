/** Hears what the page's policy refuses, on every page that is opened. */
import type { Page } from '@playwright/test';

/** Fills as the page goes on: "script-src-elem inline". Call before the page is opened. */
export async function violationsOf(page: Page): Promise<string[]> {
  const violations: string[] = [];
  await page.exposeFunction('tellViolation', (told: string) => violations.push(told));
  await page.addInitScript(() => {
    document.addEventListener(
      'securitypolicyviolation',
      ({ effectiveDirective, blockedURI, sourceFile, lineNumber }) => {
        const { tellViolation } = window as unknown as { tellViolation: (told: string) => void };
        tellViolation(`${effectiveDirective} ${blockedURI} ${sourceFile}:${lineNumber}`);
      },
    );
  });
  return violations;
}
