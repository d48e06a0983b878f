/**
 * Erases a rim round what is drawn, so that lines do not run into marks and letters. The background of the page shows
 * through the rim, by day and by night.
 */
export function cutRim(context: CanvasRenderingContext2D, draw: () => void): void {
  const before = context.globalCompositeOperation;
  context.globalCompositeOperation = 'destination-out';
  // Any full colour will do: what it covers is taken away.
  context.strokeStyle = context.fillStyle = '#000';
  draw();
  context.globalCompositeOperation = before;
}
