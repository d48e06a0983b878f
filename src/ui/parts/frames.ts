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
