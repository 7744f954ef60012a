/**
 * While a file is being made, drawings show as SVG what they otherwise paint into their canvases: grid,
 * hatching, spans of events.
 */
class DrawnWhole {
	asked = $state(false);
}
export const drawnWhole = new DrawnWhole();
