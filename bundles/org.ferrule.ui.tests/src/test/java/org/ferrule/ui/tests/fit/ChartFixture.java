/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import java.util.stream.IntStream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.Services;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.chart.FitChartEditor;
import org.ferrule.ui.fit.grounds.GroundsView;
import org.ferrule.ui.fit.matrix.MatrixTable;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;

/** A chart of a project, opened in its editor and answered. */
public final class ChartFixture implements AutoCloseable {

    private static final int LONGEST_WAIT_FIFTHS = 450;

    private final Robot robot = new Robot();
    private final IProject project;
    private FitChartEditor editor;

    private ChartFixture(IProject project) {
        this.project = project;
    }

    /** Opens the demo by its command, and one of its charts. */
    public static ChartFixture ofDemo(String chart) throws CommandException, PartInitException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        ChartFixture fixture = new ChartFixture(ResourcesPlugin.getWorkspace().getRoot().getProject("Demo"));
        fixture.open(chart);
        return fixture;
    }

    /** Opens a chart of a project of one's own. */
    public static ChartFixture of(IProject project, String chart) throws PartInitException {
        ChartFixture fixture = new ChartFixture(project);
        fixture.open(chart);
        return fixture;
    }

    public void open(String chart) throws PartInitException {
        editor = (FitChartEditor) IDE.openEditor(EditorFixture.page(), file(chart));
        waitUntilAnswered();
    }

    /** A large chart may take its time when it is answered for the first time. */
    public void waitUntilAnswered() {
        for (int i = 0; i < LONGEST_WAIT_FIFTHS && editor.answers().shown().isEmpty(); i++) {
            robot.pause(200);
        }
        robot.waitFor("answers", () -> editor.answers().shown().isPresent() && !editor.answers().stale());
    }

    public Robot robot() {
        return robot;
    }

    public IProject project() {
        return project;
    }

    public IFile file(String name) {
        return project.getFile(name);
    }

    public FitChartEditor editor() {
        return editor;
    }

    public MatrixTable table() {
        return editor.matrix().table();
    }

    public GroundsView grounds() {
        return (GroundsView) EditorFixture.page().findView(FitIds.GROUNDS_VIEW);
    }

    /** Where the line of a device is shown. */
    public int position(Side side, String id) {
        return IntStream.range(0, table().content().axis(side).size())
                .filter(i -> table().content().axis(side).line(i).head().id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not shown"));
    }

    public AskedPair pair(String outer, String inner) {
        return table().content().pair(position(Side.OUTER, outer), position(Side.INNER, inner));
    }

    public void select(String outer, String inner) {
        table().selection().select(table().content().axis(Side.OUTER).line(position(Side.OUTER, outer)).key(),
                table().content().axis(Side.INNER).line(position(Side.INNER, inner)).key());
        robot.settle();
    }

    public Rectangle bounds(String outer, String inner) {
        return table().boundsOf(position(Side.OUTER, outer), position(Side.INNER, inner))
                .orElseThrow(() -> new AssertionError("the cell is scrolled off"));
    }

    /** How many pixels of an area of the table have a colour, as they stand on the screen. */
    public int pixels(Rectangle area, RGB color) {
        robot.settle();
        Image image = new Image(table().control().getDisplay(), area.width, area.height);
        GC gc = new GC(table().control());
        try {
            gc.copyArea(image, area.x, area.y);
            return count(image.getImageData(), color);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static int count(ImageData pixels, RGB color) {
        int count = 0;
        for (int y = 0; y < pixels.height; y++) {
            for (int x = 0; x < pixels.width; x++) {
                count += pixels.palette.getRGB(pixels.getPixel(x, y)).equals(color) ? 1 : 0;
            }
        }
        return count;
    }

    /** The session in which the editor of a library would edit it; held by the chart already. */
    public DocumentSession session(String file) {
        return Services.get(DocumentSessions.class).find(file(file))
                .orElseThrow(() -> new AssertionError(file + " is not followed"));
    }

    /** An object of a library as it stands now. */
    public EObject object(String file, String path) {
        return session(file).document().flatMap(document -> ElementPath.resolve(document, path))
                .orElseThrow(() -> new AssertionError("there is no " + path));
    }

    @Override
    public void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        for (int i = 0; i < LONGEST_WAIT_FIFTHS && !Job.getJobManager().isIdle(); i++) {
            robot.pause(200);
        }
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }
}
