/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.matrix.CellChange;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.GuidesAndBalloons;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LiveChartTest {
    private final Queue<Runnable> modelThread = new ArrayDeque<>();
    private final Queue<Runnable> solverThread = new ArrayDeque<>();
    private final DeviceLibrary library = GuidesAndBalloons.library(4, 6);
    private final FitChart chart = GuidesAndBalloons.chart(4, 6);
    private Optional<RuleSet> rules = Optional.of(GuidesAndBalloons.rules());
    private final Recorder recorder = new Recorder();
    private LiveChart live;

    @Test
    void solvesAllPairsAtFirst() {
        open();
        runAll();
        assertEquals(24, recorder.last().matrix().counts().values().stream().mapToInt(i -> i).sum());
        assertEquals(List.of(), recorder.last().chart().problems());
    }

    @Test
    void answersOnlyTheColumnOfAnEditedDevice() {
        open();
        runAll();
        FitMatrix before = recorder.last().matrix();
        balloonSection("b2", "balloon").setOd(Dimension.parse("1.90 mm"));
        runAll();
        FitMatrix after = recorder.last().matrix();
        assertTrue(after.changes().stream().allMatch(c -> innerId(after, c).equals("b2")));
        assertEquals(4, after.changes().count());
        CellChange first = after.changes().toList().get(0);
        assertEquals(Verdict.BLOCKED, after.answer(first.outerIndex(), first.innerIndex()).in().geometry());
        assertEquals(before.cell(0, 0), after.cell(0, 0));
    }

    @Test
    void answersSeveralEditsInARowOnce() {
        open();
        runAll();
        int answers = recorder.solved.size();
        balloonSection("b2", "balloon").setOd(Dimension.parse("1.20 mm"));
        balloonSection("b3", "balloon").setOd(Dimension.parse("1.21 mm"));
        runAll();
        assertEquals(answers + 1, recorder.solved.size());
        assertEquals(2, recorder.stale - 1);
    }

    @Test
    void dropsAnAnswerThatANewerEditOvertakes() {
        open();
        runAll();
        int answers = recorder.solved.size();
        balloonSection("b2", "balloon").setOd(Dimension.parse("1.20 mm"));
        modelThread.remove().run();
        balloonSection("b2", "balloon").setOd(Dimension.parse("1.90 mm"));
        runAll();
        assertEquals(answers + 1, recorder.solved.size());
        assertFalse(recorder.last().matrix().changes().isEmpty());
    }

    @Test
    void keepsTheLastAnswerWhenTheRuleSetBecomesUnusable() {
        open();
        runAll();
        rules.get().getClearances().clear();
        runAll();
        assertEquals(1, recorder.solved.size());
        assertTrue(recorder.failures.get(0).get(0).message().contains("clearance"), recorder.failures::toString);
    }

    @Test
    void followsChangedRules() {
        open();
        runAll();
        rules.get().getClearances().get(0).setRequired(Dimension.parse("5 mm"));
        runAll();
        assertEquals(0, recorder.last().matrix().answer(0, 1).in().geometry() == Verdict.FITS ? 1 : 0);
        assertEquals(24, recorder.last().matrix().changes().count());
    }

    @Test
    void tellsWhichDocumentIsMissing() {
        rules = Optional.empty();
        open();
        runAll();
        assertEquals("rules", recorder.failures.get(0).get(0).place());
        assertTrue(recorder.failures.get(0).get(0).message().contains("test.rules.json"));
    }

    @Test
    void tellsWhichDeviceIsUnknown() {
        chart.getInner().getDevices().add("b77");
        open();
        runAll();
        ChartProblem problem = recorder.last().chart().problems().get(0);
        assertEquals("inner", problem.place());
        assertTrue(problem.message().contains("\"b77\""), problem::message);
    }

    @Test
    void hearsNothingAfterItIsClosed() {
        open();
        runAll();
        live.close();
        int stale = recorder.stale;
        balloonSection("b2", "balloon").setOd(Dimension.parse("1.20 mm"));
        runAll();
        assertEquals(stale, recorder.stale);
        assertEquals(1, recorder.solved.size());
    }

    @AfterEach
    void close() {
        live.close();
    }

    private void open() {
        ChartDocuments documents = new ChartDocuments() {
            @Override
            public Optional<DeviceLibrary> library(String path) {
                return path.equals("large.devices.json") ? Optional.of(library) : Optional.empty();
            }

            @Override
            public Optional<RuleSet> rules(String path) {
                return rules;
            }
        };
        live = new LiveChart(chart, documents, Extensions.ofClassPath(getClass().getClassLoader()).checks(),
                modelThread::add, solverThread::add, recorder);
    }

    private void runAll() {
        while (!modelThread.isEmpty() || !solverThread.isEmpty()) {
            (modelThread.isEmpty() ? solverThread : modelThread).remove().run();
        }
    }

    private org.ferrule.model.ShaftSection balloonSection(String id, String name) {
        Device device = library.getDevices().stream().filter(d -> d.getId().equals(id)).findFirst().orElseThrow();
        return device.getSections().stream().filter(s -> s.getName().equals(name)).findFirst().orElseThrow();
    }

    private static String innerId(FitMatrix matrix, CellChange change) {
        return matrix.question().inner().get(change.innerIndex()).device().id();
    }

    private static final class Recorder implements ChartListener {
        private int stale;
        private final List<SolvedChart> solved = new ArrayList<>();
        private final List<List<ChartProblem>> failures = new ArrayList<>();

        @Override
        public void stale() {
            stale++;
        }

        @Override
        public void solved(SolvedChart chart) {
            solved.add(chart);
        }

        @Override
        public void failed(List<ChartProblem> problems) {
            failures.add(problems);
        }

        SolvedChart last() {
            return solved.get(solved.size() - 1);
        }
    }
}
