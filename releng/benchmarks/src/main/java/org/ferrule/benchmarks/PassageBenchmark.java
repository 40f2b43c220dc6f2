/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.quick.QuickAnswer;
import org.ferrule.fit.quick.QuickBlock;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickRow;
import org.ferrule.fit.quick.QuickSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Verdicts of passages per second on one core: devices of so many sections through lumens of so many sections, hub to
 * hub, all known and constant; each verdict with its limiting sections, and one by one with the reach too. Beside it the
 * floor: the running largest profiles at the stations of the lumens lie looked up in an array, and are only subtracted.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PassageBenchmark {
    private static final int BLOCK = 32;
    private static final int SIDE = 128;
    private static final int PAIRS = SIDE * SIDE;

    /** Sections of each device, and of each lumen. */
    @Param({ "1 in 1", "2 in 1", "4 in 1", "8 in 1", "16 in 1", "2 in 2", "4 in 4", "8 in 8", "16 in 16" })
    public String sections;

    private final List<QuickOuter> lumens = new ArrayList<>();
    private final List<QuickInner> devices = new ArrayList<>();
    private final List<QuickBlock> blocks = new ArrayList<>();
    private final byte[] verdicts = new byte[PAIRS];
    private final long[] reaches = new long[PAIRS];
    private QuickRow row;
    private QuickAnswer answer;
    private int stations;
    private int[] lows;
    private int[] profiles;

    /** Makes devices and lumens, and the array of the floor. */
    @Setup
    public void prepare() {
        String[] counts = sections.split(" in ");
        stations = Integer.parseInt(counts[1]);
        MatrixQuestion question = SectionedDevices.question(SIDE, stations, SIDE, Integer.parseInt(counts[0]));
        QuickSolver solver = QuickSolver.of(question.terms(), question.solver().forCells(question.terms()),
                id -> true);
        for (MatrixLine line : question.outer()) {
            lumens.add(solver.outer(line.device(), line.lumen()).orElseThrow());
        }
        for (ReadDevice device : question.inner()) {
            devices.add(solver.inner(device).orElseThrow());
        }
        for (int i = 0; i < SIDE; i += BLOCK) {
            blocks.add(solver.block(devices.subList(i, i + BLOCK).stream().map(Optional::of).toList()));
        }
        row = solver.row();
        answer = solver.pad();
        lows = new int[SIDE * stations];
        profiles = new int[SIDE * stations];
        for (int i = 0; i < lows.length; i++) {
            lows[i] = 3_500_000 + 7919 * i % 900_000;
            profiles[i] = 2_500_000 + 6007 * i % 900_000;
        }
    }

    /**
     * Verdicts in blocks, as a matrix asks for them.
     *
     * @return all verdicts
     */
    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public byte[] inBlocks() {
        int at = 0;
        for (QuickOuter lumen : lumens) {
            for (QuickBlock block : blocks) {
                row.askPassages(lumen, block);
                for (int i = 0; i < BLOCK; i++) {
                    verdicts[at++] = (byte) row.passage(i);
                }
            }
        }
        return verdicts;
    }

    /**
     * Verdicts one by one, each with how far the device comes.
     *
     * @return how far each comes
     */
    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public long[] oneByOne() {
        int at = 0;
        for (QuickOuter lumen : lumens) {
            for (QuickInner device : devices) {
                verdicts[at] = (byte) answer.askPassage(lumen, device);
                reaches[at++] = answer.travelled();
            }
        }
        return reaches;
    }

    /**
     * Nothing but subtracting what was looked up, and comparing.
     *
     * @return all verdicts
     */
    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public byte[] floor() {
        int at = 0;
        for (int lumen = 0; lumen < SIDE; lumen++) {
            for (int device = 0; device < SIDE; device++) {
                int least = Integer.MAX_VALUE;
                for (int station = 0; station < stations; station++) {
                    least = Math.min(least, lows[lumen * stations + station] - profiles[device * stations + station]);
                }
                verdicts[at++] = (byte) (least >= 114_300 ? 0 : least >= 0 ? 1 : 3);
            }
        }
        return verdicts;
    }
}
