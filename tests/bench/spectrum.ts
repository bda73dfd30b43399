/**
 * The response spectrum: a million samples of three axes at a hundred frequencies, in one thread and on two, against SciPy's
 * `lfilter` with the same coefficients on the same samples in the same run.
 */
import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { Worker } from "node:worker_threads";
import { oscillatorFilter } from "../../src/calculations/shock/trace/ramp-invariant.ts";
import { type ResponseSpectra, responseSpectra } from "../../src/calculations/shock/trace/response-spectrum.ts";

const SAMPLES = 1_000_000;
const SAMPLE_RATE_HZ = 10_000;
const DAMPING_RATIO = 0.05;
const ROUNDS = 5;
const FREQUENCIES_HZ = Array.from({ length: 100 }, (_, index) => 10 * 100 ** (index / 99));

export interface SpectrumTask {
	readonly axes: readonly SharedArrayBuffer[];
	readonly frequenciesHz: readonly number[];
}

export function spectraOf({ axes, frequenciesHz }: SpectrumTask): ResponseSpectra {
	const [x, y, z] = axes.map((buffer) => new Float64Array(buffer)) as [Float64Array, Float64Array, Float64Array];
	return responseSpectra({
		axes: [x, y, z],
		sampleRateHz: SAMPLE_RATE_HZ,
		frequenciesHz,
		dampingRatio: DAMPING_RATIO,
		shockEndIndex: SAMPLES - 1,
		peak: "sample",
	});
}

/** Prints the figures. */
export async function benchSpectrum(): Promise<void> {
	const axes = traces();
	const [one, two, cpu, scipy] = [[] as number[], [] as number[], [] as number[][], [] as Scipy[]];
	const peer = await startScipy(axes);
	const threads = [0, 1].map(() => new Worker(new URL("spectrum-worker.js", import.meta.url)));
	const halves = [0, 1].map((half) => FREQUENCIES_HZ.filter((_, index) => index % 2 === half));
	try {
		// A thread that has just come up runs code that is not compiled for long work yet: each does the whole work alone first.
		for (const thread of threads) {
			for (let done = 0; done < 2; done += 1) {
				thread.postMessage({ axes, frequenciesHz: FREQUENCIES_HZ } satisfies SpectrumTask);
				await once(thread, "message");
			}
		}
		// A first round warms everything else up and is not counted.
		for (let round = 0; round <= ROUNDS; round += 1) {
			const alone = await secondsOf(async () => spectraOf({ axes, frequenciesHz: FREQUENCIES_HZ }));
			const both = await secondsOf(() =>
				Promise.all(
					threads.map((thread, index) => {
						thread.postMessage({ axes, frequenciesHz: halves[index] ?? [] } satisfies SpectrumTask);
						return once(thread, "message");
					}),
				),
			);
			const theirs = await peer?.round();
			if (round === 0) continue;
			one.push(alone.seconds);
			two.push(both.seconds);
			cpu.push([alone.cpuS, both.cpuS]);
			if (theirs !== undefined) scipy.push(theirs);
			if (round === ROUNDS && theirs !== undefined) holdTogether(alone.answer, theirs.greatest);
		}
	} finally {
		peer?.stop();
		for (const thread of threads) await thread.terminate();
	}
	const [ours, onTwo] = [median(one), median(two)];
	console.log(
		`${SAMPLES} samples, 3 axes and their resultant, ${FREQUENCIES_HZ.length} frequencies, median of ${ROUNDS} rounds; before the clock ran each thread had done the whole work twice`,
	);
	console.log(
		`one thread: ${ours.toFixed(2)} s; two threads: ${onTwo.toFixed(2)} s, ${(ours / onTwo).toFixed(2)} times as fast (two threads, of all rounds: ${Math.min(...two).toFixed(2)} to ${Math.max(...two).toFixed(2)} s)`,
	);
	const [cpuOne, cpuTwo] = [0, 1].map((index) => median(cpu.map((round) => round[index] ?? Number.NaN))) as [
		number,
		number,
	];
	console.log(`processor time: ${cpuOne.toFixed(2)} s on one thread, ${cpuTwo.toFixed(2)} s on two together`);
	if (scipy.length === 0) return;
	const [filter, whole] = [median(scipy.map((round) => round.filterS)), median(scipy.map((round) => round.wholeS))];
	console.log(
		`SciPy: lfilter alone ${filter.toFixed(2)} s, ${(filter / ours).toFixed(2)} times one thread of ours, ${(filter / onTwo).toFixed(2)} times two (aims: 2 and 4)`,
	);
	const filterCpu = median(scipy.map((round) => round.filterCpuS));
	console.log(
		`SciPy: processor time of lfilter alone ${filterCpu.toFixed(2)} s, ${(filterCpu / cpuOne).toFixed(2)} times one thread of ours; where others use the machine this is what to go by`,
	);
	console.log(
		`SciPy: with the extremes of each axis ${whole.toFixed(2)} s, ${(whole / ours).toFixed(2)} and ${(whole / onTwo).toFixed(2)} times`,
	);
}

/** Noise, so that nothing can be guessed; the same at every run. */
function traces(): SharedArrayBuffer[] {
	let state = 1;
	return [0, 1, 2].map(() => {
		const buffer = new SharedArrayBuffer(8 * SAMPLES);
		const samples = new Float64Array(buffer);
		for (let index = 0; index < SAMPLES; index += 1) {
			state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
			samples[index] = state / 2 ** 31 - 1;
		}
		return buffer;
	});
}

interface Scipy {
	readonly filterS: number;
	readonly filterCpuS: number;
	readonly wholeS: number;
	/** Greatest size of each axis at each frequency. */
	readonly greatest: readonly (readonly number[])[];
}

const PROGRAM = `
import json, sys, time
import numpy
from scipy.signal import lfilter
axes = numpy.fromfile(sys.argv[1]).reshape(3, -1)
filters = json.loads(open(sys.argv[2]).read())
for _ in sys.stdin:
    filter_s, filter_cpu_s, greatest = 0.0, 0.0, []
    begun = time.perf_counter()
    for b0, b1, b2, a1, a2 in filters:
        before, cpu_before = time.perf_counter(), time.process_time()
        responses = lfilter([b0, b1, b2], [1.0, a1, a2], axes)
        filter_s += time.perf_counter() - before
        filter_cpu_s += time.process_time() - cpu_before
        greatest.append(numpy.maximum(responses.max(axis=1), -responses.min(axis=1)).tolist())
    whole_s = time.perf_counter() - begun
    print(json.dumps({"filterS": filter_s, "filterCpuS": filter_cpu_s, "wholeS": whole_s, "greatest": greatest}), flush=True)
`;

async function startScipy(axes: readonly SharedArrayBuffer[]) {
	if (spawnSync("python3", ["-c", "import scipy.signal"]).status !== 0) {
		console.log("SciPy is not there (Debian: python3-scipy): nothing to compare with");
		return null;
	}
	const folder = await mkdtemp(join(tmpdir(), "handover-bench-"));
	await writeFile(join(folder, "axes"), Buffer.concat(axes.map((buffer) => new Uint8Array(buffer))));
	const filters = FREQUENCIES_HZ.map((hz) => [...oscillatorFilter(hz, DAMPING_RATIO, SAMPLE_RATE_HZ)]);
	await writeFile(join(folder, "filters"), JSON.stringify(filters));
	const child = spawn("python3", ["-c", PROGRAM, join(folder, "axes"), join(folder, "filters")], {
		stdio: ["pipe", "pipe", "inherit"],
	});
	const lines = createInterface({ input: child.stdout });
	return {
		async round(): Promise<Scipy> {
			const line = once(lines, "line");
			child.stdin.write("\n");
			return JSON.parse(String((await line)[0])) as Scipy;
		},
		stop() {
			child.kill();
			void rm(folder, { recursive: true, force: true });
		},
	};
}

/** Both must have computed the same. */
function holdTogether(ours: ResponseSpectra, theirs: Scipy["greatest"]): void {
	let worst = 0;
	theirs.forEach((axes, index) => {
		axes.forEach((greatest, axis) => {
			// SciPy stops with the trace; so does the primary response.
			worst = Math.max(worst, Math.abs((ours.axes[axis]?.[index]?.primaryGn ?? Number.NaN) / greatest - 1));
		});
	});
	console.log(`greatest responses agree with SciPy's to ${worst.toExponential(1)}`);
	if (!(worst < 1e-9)) process.exitCode = 1;
}

async function secondsOf<Answer>(
	act: () => Promise<Answer>,
): Promise<{ seconds: number; cpuS: number; answer: Answer }> {
	const begun = performance.now();
	const cpu = process.cpuUsage();
	const answer = await act();
	const { user, system } = process.cpuUsage(cpu);
	return { seconds: (performance.now() - begun) / 1000, cpuS: (user + system) / 1e6, answer };
}

function median(values: readonly number[]): number {
	return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
