/** High-rate drawing: one call per frame of the display for as long as the element is on the page. */

/** An attachment: `{@attach eachFrame(draw)}`. `draw` gets the element and writes to it directly. */
export function eachFrame<Target extends Element>(draw: (target: Target) => void) {
  return (target: Target) => {
    let handle = requestAnimationFrame(function frame() {
      draw(target);
      handle = requestAnimationFrame(frame);
    });
    return () => cancelAnimationFrame(handle);
  };
}

export interface Size {
  /** In CSS pixels. */
  readonly width: number;
  readonly height: number;
}

const sizes = new WeakMap<Element, Size>();
let observer: ResizeObserver | null = null;

/**
 * How large an element is, told by the browser when it changes: asking at every frame would make it lay the page out
 * anew in the middle of one.
 */
export function sizeOf(element: Element): Size {
  const known = sizes.get(element);
  if (known !== undefined) return known;
  observer ??= new ResizeObserver((entries) => {
    for (const { target } of entries) sizes.set(target, measure(target));
  });
  observer.observe(element);
  const size = measure(element);
  sizes.set(element, size);
  return size;
}

const measure = ({ clientWidth, clientHeight }: Element): Size => ({
  width: clientWidth,
  height: clientHeight,
});

/** Gives a canvas as many pixels as its place on the page has; answers with its context in CSS pixels. */
export function sizedContext(
  canvas: HTMLCanvasElement,
): { readonly context: CanvasRenderingContext2D; readonly width: number; readonly height: number } | null {
  const context = canvas.getContext('2d');
  if (context === null) return null;
  const { width, height } = sizeOf(canvas);
  const ratio = Math.min(window.devicePixelRatio, 2);
  const wide = Math.round(width * ratio);
  const high = Math.round(height * ratio);
  if (canvas.width !== wide || canvas.height !== high) {
    canvas.width = wide;
    canvas.height = high;
  }
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, height);
  return { context, width, height };
}

export interface Inks {
  readonly paper: string;
  readonly deep: string;
  readonly ink: string;
  readonly soft: string;
  readonly rule: string;
  readonly shore: string;
  readonly wash: string;
}

let known: Inks | null = null;
let watching = false;

/**
 * The palette as it stands now: a canvas can't read CSS variables by itself. Read once, and again when the theme
 * turns: asking at every frame would make the browser reckon all styles. The same palette is the same object.
 */
export function inksNow(): Inks {
  if (!watching) {
    watching = true;
    const forget = () => (known = null);
    for (const asked of ['(prefers-color-scheme: dark)', '(forced-colors: active)'])
      matchMedia(asked).addEventListener('change', forget);
    new MutationObserver(forget).observe(document.documentElement, { attributeFilter: ['data-theme'] });
  }
  return (known ??= readInks());
}

function readInks(): Inks {
  const style = getComputedStyle(document.documentElement);
  const read = (name: string) => style.getPropertyValue(name).trim();
  return {
    paper: read('--paper'),
    deep: read('--paper-deep'),
    ink: read('--ink'),
    soft: read('--ink-soft'),
    rule: read('--rule'),
    shore: read('--shore'),
    wash: read('--shore-wash'),
  };
}
