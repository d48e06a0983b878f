/**
 * A rim round what is drawn, through which the page shows: so that lines do not run through marks and letters, whatever
 * light lies on the page.
 */
export function cutRim(context: CanvasRenderingContext2D, draw: () => void): void {
  const before = context.globalCompositeOperation;
  context.globalCompositeOperation = 'destination-out';
  // Any full colour will do: what it covers is taken away.
  context.strokeStyle = context.fillStyle = '#000';
  draw();
  context.globalCompositeOperation = before;
}
