import { defineConfig } from '@playwright/test';
import tests from './playwright.config.ts';

/** `npm run pictures`: no test, but the same built site and the same browser. */
/** All settings of the tests but their two groups, which name files of their own. */
const { projects: _, ...settings } = tests;

export default defineConfig({
  ...settings,
  testMatch: 'make-pictures.ts',
  reporter: 'list',
  timeout: 180_000,
});
