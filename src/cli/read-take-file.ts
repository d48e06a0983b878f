/** A take file, graded by what it says of itself. */
import { good, type Outcome } from '../core/base/outcome.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import type { GradedSound } from '../core/grade-samples.ts';
import { gradeTakeFile } from '../core/take-file/grade-take-file.ts';
import { readTakeFile } from '../core/take-file/read-take-file.ts';
import type { TakeDetails } from '../core/take/details-schema.ts';
import { en } from '../core/words/en.ts';
import type { Message, Notice } from '../core/words/problem.ts';
import type { Progress } from './progress.ts';

export interface GradedTakeFile extends GradedSound {
  readonly details: TakeDetails;
  readonly warnings: readonly Notice[];
}

const isNotice = (message: Message): message is Notice => message.code in en.notices;

/** Reads and grades. Its sound is listened to anew; the report in it is not looked at. */
export async function gradedTakeFile(
  source: ByteSource,
  progress: Progress,
): Promise<Outcome<GradedTakeFile>> {
  const file = await readTakeFile(source);
  if (!file.ok) return file;
  const { details, frames } = file.value;
  const warnings: Notice[] = [];
  const graded = await gradeTakeFile(file.value, source.name, {
    progress: (share) => progress.at((share * frames) / details.sampleRate, share),
    message: (message) => {
      if (isNotice(message)) warnings.push(message);
    },
  });
  return graded.ok ? good({ ...graded.value, details, warnings }) : graded;
}
