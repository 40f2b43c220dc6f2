/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.LongStream;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.ide.IDE;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.GuidesAndBalloons;
import org.ferrule.samples.LargeLibrary;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.fit.ChartFixture;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A matrix of 2,000 x 2,000 devices: how long a page takes to be painted, and an edit to be shown. */
class LargeMatrixSpeed {

    private static final int LINES = 2000;
    private static final int DEVICES = 20_000;
    private static final int PAGES = 20;
    private static final int EDITS = 8;
    private static final int LONGEST_WAIT_FIFTHS = 300;
    private static final int WARM_AFTER = 3;
    private static final int BETWEEN_EDITS_MS = 2500;
    private static final String LIBRARY = "large.devices.json";
    private static final String GUIDE = "devices[g3]/lumens[0]/sections[0]";

    private ChartFixture fixture;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private long cpuStart;
    private long cpuEnd;
    private long paintStart;
    private long paintEnd;
    private Rectangle painted;

    @BeforeEach
    void open() throws CoreException {
        IProject project = Projects.create("Large");
        JsonDocuments documents = new JsonDocuments();
        write(project, LIBRARY, documents.write(GuidesAndBalloons.library(LINES, LINES)));
        write(project, "test.rules.json", documents.write(GuidesAndBalloons.rules()));
        write(project, "large.chart.json", documents.write(GuidesAndBalloons.chart(LINES, LINES)));
        long start = System.nanoTime();
        fixture = ChartFixture.of(project, "large.chart.json");
        System.out.printf(Locale.ROOT, "speed: %d x %d opened and answered: %.1f s%n", LINES, LINES,
                (System.nanoTime() - start) / 1e9);
        assertEquals(LINES, fixture.table().content().axis(Side.OUTER).size());
        waitForQuiet();
        Display.getCurrent().addFilter(SWT.Paint, this::paints);
        fixture.table().control().addListener(SWT.Paint, this::hasPainted);
    }

    /** The check for problems looks at four million answers; what is measured here does not wait for it for ever. */
    private void waitForQuiet() {
        for (int i = 0; i < LONGEST_WAIT_FIFTHS && !Job.getJobManager().isIdle(); i++) {
            fixture.robot().pause(200);
        }
    }

    private static void write(IProject project, String name, byte[] content) throws CoreException {
        Projects.write(project, name, new String(content, StandardCharsets.UTF_8));
    }

    private void paints(Event event) {
        if (event.widget == fixture.table().control()) {
            paintStart = System.nanoTime();
            cpuStart = threads.getCurrentThreadCpuTime();
        }
    }

    private void hasPainted(Event event) {
        paintEnd = System.nanoTime();
        cpuEnd = threads.getCurrentThreadCpuTime();
        painted = new Rectangle(event.x, event.y, event.width, event.height);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    @Test
    void paintsPagesAndShowsEdits() throws CoreException {
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        fixture.robot().clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        page("page painted while scrolling down", SWT.PAGE_DOWN);
        page("page painted while scrolling right", SWT.ARROW_RIGHT);
        edits("edit to painted");
        fixture.table().showSums(true);
        page("page painted with sums", SWT.PAGE_UP);
        edits("edit to painted with sums");
        sayHeap("the matrix open");
        openLargeLibrary();
        sayHeap("the matrix and a library of " + DEVICES + " devices open");
    }

    private void openLargeLibrary() throws CoreException {
        IProject project = fixture.session(LIBRARY).file().getProject();
        write(project, "many.devices.json", new JsonDocuments().write(LargeLibrary.of(DEVICES)));
        IDE.openEditor(EditorFixture.page(), project.getFile("many.devices.json"));
        waitForQuiet();
    }

    private static void sayHeap(String when) {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(Locale.ROOT, "speed: heap with %s: %d MB of at most %d MB%n", when,
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000, runtime.maxMemory() / 1_000_000);
    }

    private void page(String what, int key) {
        Figures figures = new Figures(what);
        Rectangle all = fixture.table().control().getClientArea();
        for (int i = 0; i < PAGES; i++) {
            paintEnd = 0;
            fixture.robot().keyPainted(fixture.table().control(), key);
            fixture.table().control().redraw();
            paintEnd = 0;
            fixture.robot().waitFor("a painted page",
                    () -> paintEnd != 0 && painted.width >= all.width - 1 && painted.height >= all.height - 1);
            figures.add((paintEnd - paintStart) / 1e6, (cpuEnd - cpuStart) / 1e6);
        }
        figures.print();
    }

    private void edits(String what) {
        fixture.table().selection().select(fixture.table().content().axis(Side.OUTER).line(3).key(),
                fixture.table().content().axis(Side.INNER).line(0).key());
        waitForQuiet();
        Figures figures = new Figures(what);
        for (int i = 0; i < EDITS; i++) {
            long worked = worked();
            double time = edit(i);
            if (i >= WARM_AFTER) {
                figures.add(time, (worked() - worked) / 1e6);
            }
            fixture.robot().pause(BETWEEN_EDITS_MS);
        }
        int changed = fixture.editor().answers().shown().orElseThrow().matrix().changes().count();
        assertTrue(changed > 0 && changed <= LINES, changed + " cells were answered anew");
        figures.print();
    }

    /** What the display's thread and the solver's have worked. */
    private long worked() {
        return LongStream.of(threads.getAllThreadIds()).filter(id -> threads.getThreadInfo(id) != null)
                .filter(id -> id == Thread.currentThread().getId()
                        || threads.getThreadInfo(id).getThreadName().equals("Fit chart solver"))
                .map(threads::getThreadCpuTime).sum();
    }

    /** From the command to the end of the paint event that shows the other answer. */
    private double edit(int i) {
        EObject section = fixture.object(LIBRARY, GUIDE);
        SolvedChart before = fixture.editor().answers().shown().orElseThrow();
        long start = System.nanoTime();
        fixture.session(LIBRARY).set(section, ModelPackage.Literals.LUMEN_SECTION__ID,
                Dimension.parse(String.format(Locale.ROOT, "0.%03d in min", 40 + i)));
        paintEnd = 0;
        Display display = Display.getCurrent();
        while (fixture.editor().answers().shown().orElseThrow() == before || paintEnd == 0) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
            if (fixture.editor().answers().shown().orElseThrow() == before) {
                paintEnd = 0;
            }
        }
        return (paintEnd - start) / 1e6;
    }
}
