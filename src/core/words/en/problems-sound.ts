/** Problems of microphone, band, backing and sound check. */

export const problemsOfSound = {
  // ── room and beats ──
  'beatFinder.tooShort': ({ seconds }: { seconds: number }) =>
    `The recording lasts less than ${seconds} seconds: too short to find a beat in.`,
  'beatFinder.silent': 'The recording is silent: open another file.',
  'beatFinder.none': 'No steady beat was found in this recording: tap the beats while you hear it.',
  'sweep.silent':
    'The microphone gave only silence during the sweep: check that it is not muted, then try again.',
  'sweep.tooLoud':
    'The sweep was too loud for the microphone: turn the speakers or the input down and try again.',
  'sweep.playing': 'Something was played during the sweeps: damp the strings, and try again.',
  'sweep.noisyRoom':
    'The room is too loud to hear the sweep: wait for a quieter moment, or turn the speakers up a little.',
  'sweep.nothingRecorded': 'Nothing was recorded during the sweep: try again.',
  'sweep.spread': ({ ms }: { ms: number }) =>
    `The delay differed by ${ms} ms from one sweep to the next: close other programs, wait until it is quiet, and try again.`,

  // ── audio, storage, analysis, state ──
  'microphone.insecure':
    'Browsers open the microphone only on https or localhost: open the page at such an address.',
  'microphone.unsupported':
    'This browser has no microphone for web pages: use a current Chrome, Edge, Firefox or Safari.',
  'microphone.blocked':
    'The microphone is blocked: allow it for this page in the address bar, and in the system settings, then try again.',
  'microphone.blockedByPage':
    'The microphone is blocked on this page by its settings: open the page by itself, then try again.',
  'microphone.notFound': 'No microphone was found: plug one in, then try again.',
  'microphone.removed': 'That microphone is no longer connected: choose another one.',
  'microphone.busy':
    'The microphone is connected but sends no sound: another program may be using it. Close that program, then try again.',
  'microphone.stopped': 'The microphone stopped while it was being opened: try again.',
  'microphone.failed': 'The microphone could not be opened: check that it is plugged in, then try again.',
  'microphone.lost':
    'The microphone is gone: it was unplugged or stopped. What you played until now is kept; plug it in, then start again.',
  'microphone.silent':
    'The microphone sends nothing but silence: look for a mute switch, and check which input is chosen in the system settings.',
  'microphone.paused':
    'The browser has stopped the sound, perhaps because the machine went to sleep. What you played is kept, and the take goes on when the sound is back.',
  'microphone.otherRate':
    'The sound devices have changed since this page was loaded: reload the page, then try again. Your takes are kept.',
  'microphone.recorder': 'The recorder could not be loaded. Reload the page and try again.',
  'output.asleep':
    'The browser did not start its sound: click once more, and check that a sound output is connected.',
  'output.removed': 'That output is no longer connected: choose another one.',
  'playback.workerGone': 'The take can’t be slowed down: reload the page and try again.',
  'playback.notSlowed': ({ reason }: { reason: string }) =>
    `The take can’t be slowed down (${reason}). At full speed it plays as before.`,
  'band.notLoaded':
    'The sounds of the band did not load: the server that this page came from does not answer. Start it, or look whether the network is there, then try again.',
  'band.failed': ({ reason }: { reason: string | null }) =>
    `The band can’t play${reason === null ? '' : ` (${reason})`}. Reload the page and try again.`,
  'backing.failed': ({ reason }: { reason: string }) =>
    `The recording could not be processed (${reason}). Reload the page and try again.`,
  'backing.workerGone': 'The recording could not be processed: reload the page and try again.',
  'backing.superseded': 'The settings of the recording have changed meanwhile: press Start again.',
  'backing.notOpen': 'No recording is open: open one first.',
  'backing.tooShort': ({ name, seconds }: { name: string; seconds: number }) =>
    `${name} lasts less than ${seconds} seconds: too short to play over. Open a longer one.`,
  'backing.silent': ({ name }: { name: string }) =>
    `${name} is silent from beginning to end: open another file.`,
  'backing.takeAlone': ({ cause }: { cause: string }) => `${cause} Press again to hear the take alone.`,
  'backing.noWholeBar': ({ title }: { title: string }) =>
    `“${title}” has no whole bar after its first downbeat: set the downbeat earlier.`,
  'backing.tooFewTaps': ({ least }: { least: number }) =>
    `Tap ${least} beats or more while the recording plays.`,
  'backing.beatOrder': 'The beats of the recording are not in order: set them again.',
  'backing.gone': 'This recording is no longer on this machine: open its file again.',
  'backing.noSpace':
    'There is no space on this machine for the recording: it can be played now, but it will not be kept. Remove takes or recordings that you no longer need.',
  'backing.recordsUnreadable':
    'The record of a recording could not be read; the other recordings are unchanged.',
  'listener.failed': ({ reason }: { reason: string }) =>
    `The listener failed (${reason}). The recording is unchanged: grade it again.`,
  'listener.notLoaded':
    'The listener did not load: the server that this page came from does not answer. Start it, reload the page, then try again. Your takes are kept.',
  'listener.stopped': 'The listener stopped by itself. Nothing that was played is lost: try again.',
  'listener.sampleRate': ({ hz }: { hz: number }) =>
    `The microphone runs at ${hz} Hz; Landfall hears 8000 to 192000 Hz. Choose another input.`,
  'listener.notOpen': 'The listener is not running. Start a take first.',
  'order.tempo': ({ bpm, slowest, fastest }: { bpm: number; slowest: number; fastest: number }) =>
    `The tempo is ${bpm}; it can be ${slowest} to ${fastest} beats a minute.`,
  'order.swing': ({ swing, straight, widest }: { swing: number; straight: number; widest: number }) =>
    `The swing is ${swing}; it can be ${straight} (straight) to ${widest}.`,
  'soundCheck.left': 'The sound check was closed before it was done.',
  'soundCheck.clicksHeard':
    'The clicks themselves came back through the microphone, so the strokes could not be told from them: with speakers play the sweeps; with headphones turn the click down, and strike only after the count-in.',
  'soundCheck.strokesApart': ({ asked }: { asked: number }) =>
    `The strokes and the clicks were not together: wait for the four low clicks, then strike the muted strings once with each of the ${asked} high ones, as loud as you play.`,
  'soundCheck.strokesLost':
    'The browser lost sound during the clicks, so the strokes can’t be measured: close other programs, and play them again.',
  'soundCheck.soundLost': 'The browser lost sound during each sweep: close other programs, and try again.',
  'harmony.noChords': 'No chord is heard in this recording: write the chart by hand.',
};
