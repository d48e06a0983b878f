/** The size of a canvas on the page, and its context in CSS pixels. */

export interface Size {
  /** In CSS pixels. */
  readonly width: number;
  readonly height: number;
}

const sizes = new WeakMap<Element, Size>();
let observer: ResizeObserver | null = null;

/**
 * How large an element is. The browser reports each change of it; to ask in every frame would make the browser lay the
 * page out anew in the middle of a frame.
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
