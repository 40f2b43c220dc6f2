/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.fit.matrix.MatrixAxis;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.OutcomeFile;
import org.ferrule.ui.tests.robot.Robot;

/**
 * What {@link MatrixMemoryTest} lets a workbench in another process do, named by a system property; nothing in any other
 * workbench. It writes how the matrix looks into a file that another property names, and ends in good order.
 */
public class MatrixRun implements IStartup {
    /** The property that names what to do: {@link #ARRANGE} or {@link #LOOK}. */
    static final String TASK = "ferrule.matrix.task";
    /** The property that names the file for the outcome. */
    static final String OUTCOME = "ferrule.matrix.outcome";
    /** Opens a chart and folds, pins, moves and exchanges lines. */
    static final String ARRANGE = "arrange";
    /** Looks at the chart that was left open. */
    static final String LOOK = "look";

    private static final String CHART = "balloons-through-guides.chart.json";

    @Override
    public void earlyStartup() {
        String task = System.getProperty(TASK, "");
        if (!task.isEmpty()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> report(task));
        }
    }

    private static void report(String task) {
        String outcome;
        try {
            outcome = ARRANGE.equals(task) ? arrange() : look();
        } catch (CommandException | CoreException | RuntimeException | AssertionError e) {
            outcome = "failed: " + e;
        }
        OutcomeFile.write(OUTCOME, outcome);
        PlatformUI.getWorkbench().close();
    }

    private static String arrange() throws CommandException, CoreException {
        ChartFixture fixture = ChartFixture.ofDemo(CHART);
        Robot robot = fixture.robot();
        robot.waitForJobs();
        MatrixContent content = fixture.table().content();
        click(fixture, 3);
        robot.keyWith(SWT.SHIFT, SWT.F7);
        robot.waitFor("a pinned row", () -> content.rows().pinned() == 1);
        click(fixture, 2);
        List<String> before = keys(content.rows());
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.waitFor("another order", () -> !keys(content.rows()).equals(before));
        robot.key(SWT.F5);
        robot.waitFor("sums", () -> content.sums().shown());
        holding(robot, 'g');
        robot.waitFor("a folded group", () -> IntStream.range(0, content.columns().size())
                .anyMatch(content.columns()::isFolded));
        robot.key(SWT.F9);
        robot.waitFor("exchanged sides", () -> content.rowSide() == Side.INNER);
        return words(content);
    }

    private static void holding(Robot robot, char letter) {
        robot.holding(SWT.CTRL, () -> robot.keys(SWT.SHIFT, letter));
    }

    private static void click(ChartFixture fixture, int row) {
        Rectangle cell = fixture.table().boundsOf(row, 0).orElseThrow();
        fixture.robot().clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
    }

    private static String look() throws CoreException {
        ChartFixture fixture = ChartFixture.of(ResourcesPlugin.getWorkspace().getRoot().getProject("Demo"), CHART);
        return words(fixture.table().content());
    }

    private static String words(MatrixContent content) {
        return "exchanged " + (content.rowSide() == Side.INNER) + "\nsums " + content.sums().shown() + "\n"
                + Stream.of(Side.values()).map(side -> words(side, content.axis(side))).reduce("", String::concat);
    }

    private static String words(Side side, MatrixAxis axis) {
        return side + " pinned " + axis.pinned() + ", lines " + keys(axis) + "\n";
    }

    /** The lines in their order; of a folded group its name. */
    private static List<String> keys(MatrixAxis axis) {
        return IntStream.range(0, axis.size()).mapToObj(
                i -> axis.isFolded(i) ? "folded: " + axis.line(i).head().group() : axis.line(i).key()).toList();
    }
}
