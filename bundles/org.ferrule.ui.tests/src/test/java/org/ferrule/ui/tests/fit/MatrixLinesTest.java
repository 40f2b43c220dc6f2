/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.XMLMemento;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Sorting;
import org.ferrule.ui.fit.matrix.MatrixAxis;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.MatrixState;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Rows and columns are folded, pinned, moved, hidden and exchanged, by mouse and by keys. */
class MatrixLinesTest {

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
        clickCell(0, 0);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private void clickCell(int row, int column) {
        Rectangle cell = fixture.table().boundsOf(row, column).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
    }

    private MatrixContent content() {
        return fixture.table().content();
    }

    private MatrixAxis rows() {
        return content().rows();
    }

    private List<String> rowKeys() {
        return IntStream.range(0, rows().size()).mapToObj(i -> rows().line(i).key()).toList();
    }

    private FitChart chart() {
        return fixture.editor().answers().chart().orElseThrow();
    }

    @Test
    void aKeyFoldsTheGroupOfTheSelectedRowAndShowsItsSums() {
        int before = rows().size();
        String group = rows().line(0).head().group();
        List<Integer> members = IntStream.range(0, before).filter(i -> rows().line(i).head().group().equals(group))
                .boxed().toList();
        long fits = members.stream().map(row -> content().cell(row, 0)).map(FitCell::in)
                .filter(in -> in.verdict() == Verdict.FITS).count();
        robot.keys(SWT.CTRL, 'g');
        robot.waitFor("a folded group", () -> rows().size() == before - members.size() + 1);
        new ScreenPicture().take("matrix-folded");
        assertTrue(rows().isFolded(0));
        assertEquals(fits, content().sums().at(0, 0).of(Verdict.FITS));
        assertTrue(fixture.table().selection().pair().isEmpty(), "no single pair is selected");
        robot.keys(SWT.CTRL, 'g');
        robot.waitFor("all lines again", () -> rows().size() == before);
    }

    @Test
    void aClickOnTheHeadOfAGroupFoldsIt() {
        int before = content().columns().size();
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, 8);
        robot.waitFor("a folded group", () -> content().columns().size() < before);
        assertTrue(content().columns().isFolded(0));
    }

    @Test
    void aPinnedRowComesFirstAndStaysWhenOthersScroll() {
        clickCell(2, 0);
        String key = rows().line(2).key();
        robot.keyWith(SWT.SHIFT, SWT.F7);
        robot.waitFor("a pinned row", () -> rows().line(0).key().equals(key) && rows().pinned() == 1);
        Rectangle at = fixture.table().boundsOf(0, 0).orElseThrow();
        fixture.table().selection().select(rows().line(rows().size() - 1).key(), content().columns().line(0).key());
        robot.settle();
        new ScreenPicture().take("matrix-pinned");
        assertEquals(at, fixture.table().boundsOf(0, 0).orElseThrow());
        assertTrue(fixture.table().boundsOf(1, 0).isEmpty(), "the others have scrolled");
    }

    @Test
    void rowsAndColumnsAreExchanged() {
        FitCell cell = content().cell(1, 2);
        robot.key(SWT.F9);
        robot.waitFor("exchanged sides", () -> content().rowSide() == Side.INNER);
        assertEquals(cell, content().cell(2, 1));
        clickCell(2, 1);
        new ScreenPicture().take("matrix-transposed");
        assertEquals(content().columns().line(1).head().id(),
                fixture.table().selection().pair().orElseThrow().question().outer().device().id());
        robot.key(SWT.F9);
        robot.waitFor("sides as before", () -> content().rowSide() == Side.OUTER);
    }

    @Test
    void anOrderOfKindsIsKeptByTheEditor() {
        List<String> before = rowKeys();
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.waitFor("the other order", () -> rowKeys().get(1).equals(before.get(0)));
        assertFalse(fixture.editor().isDirty());
        XMLMemento memento = XMLMemento.createWriteRoot("editor");
        new MatrixState(content()).save(memento);
        MatrixContent other = new MatrixContent();
        new MatrixState(other).restore(memento);
        other.show(content().solved().orElseThrow(), false);
        assertEquals(rowKeys(), IntStream.range(0, other.rows().size()).mapToObj(i -> other.rows().line(i).key())
                .toList());
    }

    /** Lists the first devices of the rows one by one, as many as asked for. */
    private List<String> listRows(int count) {
        List<String> ids = IntStream.range(0, count).mapToObj(i -> rows().line(i).head().id()).distinct().toList();
        fixture.editor().session().set(chart().getOuter(), Literals.AXIS__DEVICES, ids);
        fixture.editor().session().set(chart().getOuter(), Literals.AXIS__SORT_BY, Sorting.AS_LISTED);
        fixture.editor().session().set(chart().getOuter(), Literals.AXIS__GROUP_BY, null);
        robot.waitFor("the listed devices", () -> Set.copyOf(ids).equals(
                Set.copyOf(IntStream.range(0, rows().size()).mapToObj(i -> rows().line(i).head().id()).toList())));
        robot.settle();
        return ids;
    }

    private List<String> shown(int... places) {
        return IntStream.of(places).mapToObj(i -> rows().line(i).head().id()).toList();
    }

    private void selectRows(int... places) {
        Rectangle first = fixture.table().boundsOf(places[0], 0).orElseThrow();
        robot.clickPainted(fixture.table().control(), first.x + 5, first.y + 5);
        IntStream.of(places).skip(1).mapToObj(place -> fixture.table().boundsOf(place, 0).orElseThrow())
                .forEach(cell -> robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5, SWT.CTRL));
        robot.waitFor("the selected rows", () -> fixture.table().selection().positions(Side.OUTER)
                .equals(IntStream.of(places).boxed().toList()));
    }

    @Test
    void selectedRowsThatAreDraggedByOneHeadLandTogetherAndOneUndoPutsThemBack() {
        List<String> ids = listRows(5);
        selectRows(0, 2);
        Rectangle first = fixture.table().boundsOf(0, 0).orElseThrow();
        Rectangle fourth = fixture.table().boundsOf(3, 0).orElseThrow();
        robot.dragPainted(fixture.table().control(), new Point(first.x - 40, first.y + 10),
                new Point(fourth.x - 40, fourth.y + 10));
        List<String> moved = List.of(ids.get(1), ids.get(3), ids.get(0), ids.get(2), ids.get(4));
        robot.waitFor("the other order in the chart", () -> chart().getOuter().getDevices().equals(moved));
        robot.waitFor("the other order in the matrix", () -> shown(0, 1, 2, 3, 4).equals(moved));
        robot.waitFor("the same rows selected",
                () -> fixture.table().selection().positions(Side.OUTER).equals(List.of(2, 3)));
        new ScreenPicture().take("matrix-rows-moved");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former order", () -> shown(0, 1, 2, 3, 4).equals(ids));
        assertEquals(ids, chart().getOuter().getDevices());
    }

    @Test
    void aKeyMovesAllSelectedRows() {
        List<String> ids = listRows(5);
        selectRows(1, 3);
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        List<String> moved = List.of(ids.get(0), ids.get(2), ids.get(4), ids.get(1), ids.get(3));
        robot.waitFor("both below the last", () -> shown(0, 1, 2, 3, 4).equals(moved));
        robot.waitFor("the same rows selected",
                () -> fixture.table().selection().positions(Side.OUTER).equals(List.of(3, 4)));
        robot.keyWith(SWT.ALT, SWT.ARROW_UP);
        List<String> up = List.of(ids.get(0), ids.get(2), ids.get(1), ids.get(3), ids.get(4));
        robot.waitFor("both one place up", () -> shown(0, 1, 2, 3, 4).equals(up));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the order before", () -> shown(0, 1, 2, 3, 4).equals(moved));
    }

    @Test
    void selectedColumnsAreMovedByKeyToo() {
        List<String> before = IntStream.range(0, 4).mapToObj(i -> content().columns().line(i).key()).toList();
        Rectangle first = fixture.table().boundsOf(0, 0).orElseThrow();
        Rectangle second = fixture.table().boundsOf(0, 1).orElseThrow();
        robot.clickPainted(fixture.table().control(), first.x + 5, first.y + 5);
        robot.clickPainted(fixture.table().control(), second.x + 5, second.y + 5, SWT.CTRL);
        robot.holding(SWT.SHIFT, () -> robot.keyWith(SWT.ALT, SWT.ARROW_RIGHT));
        List<String> moved = List.of(before.get(2), before.get(0), before.get(1), before.get(3));
        robot.waitFor("the other order", () -> IntStream.range(0, 4)
                .mapToObj(i -> content().columns().line(i).key()).toList().equals(moved));
    }

    @Test
    void aDraggedHeadMovesAListedDeviceInTheChartAndUndoPutsItBack() {
        List<String> ids = listRows(4);
        Rectangle first = fixture.table().boundsOf(0, 0).orElseThrow();
        Rectangle third = fixture.table().boundsOf(2, 0).orElseThrow();
        robot.dragPainted(fixture.table().control(), new Point(first.x - 40, first.y + 10),
                new Point(third.x - 40, third.y + 10));
        List<String> moved = List.of(ids.get(1), ids.get(2), ids.get(0), ids.get(3));
        robot.waitFor("the other order in the chart", () -> chart().getOuter().getDevices().equals(moved));
        robot.waitFor("the other order in the matrix", () -> rows().line(2).head().id().equals(ids.get(0)));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former order", () -> rows().line(0).head().id().equals(ids.get(0)));
        assertEquals(ids, chart().getOuter().getDevices());
    }

    @Test
    void aKeyHidesTheSelectedRowAndUndoShowsItAgain() {
        int before = rows().size();
        robot.keys(SWT.CTRL, '9');
        robot.waitFor("a hidden row", () -> rows().size() < before);
        assertEquals(1, chart().getOuter().getHidden().size());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the row again", () -> rows().size() == before);
    }
}
