import { defineConfig } from '@playwright/test';
import tests from './playwright.config.ts';

/** `npm run pictures`: no test, but the same built site and the same browser. */
export default defineConfig({ ...tests, testMatch: 'make-pictures.ts', reporter: 'list', timeout: 180_000 });
