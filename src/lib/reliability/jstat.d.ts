declare module 'jstat' {
	const jstat: {
		chisquare: { inv(p: number, degreesOfFreedom: number): number };
	};
	export default jstat;
}
