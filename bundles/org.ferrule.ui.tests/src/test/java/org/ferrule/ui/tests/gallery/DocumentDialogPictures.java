/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.escalation.CaseEditor;
import org.ferrule.ui.escalation.shelf.ShelfEditor;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;

/** Dialogs and forms that stand on an open document. No registry knows them: a new one is added here. */
final class DocumentDialogPictures {

    private static final String LIBRARY = "access-and-guides.devices.json";
    private static final String GUIDE = "devices[kes-guide-6fr-right-100]/lumens[0]/sections[0]";
    private static final String CHART = "balloons-through-guides.chart.json";

    private final Camera camera;
    private final Robot robot;
    private final EditorPictures editors;

    DocumentDialogPictures(Camera camera, EditorPictures editors) {
        this.camera = camera;
        this.robot = camera.robot();
        this.editors = editors;
    }

    void take() {
        with("dialogs of a library", this::library);
        with("dialogs of an edit", this::edit);
        with("dialogs of a chart", this::chart);
        with("dialogs of a shelf", this::shelf);
        with("dialogs of a case", this::caseDocument);
    }

    private void with(String what, Camera.Scene scene) {
        camera.attempt(what, scene);
        EditorFixture.page().closeAllEditors(false);
    }

    private static Composite body(FormEditor editor) {
        return editor.getActivePageInstance().getPartControl().getParent();
    }

    /** Without the pointer, whose tooltip would come up over the dialog. */
    private static void press(FormEditor editor, String button) {
        Widgets.button(body(editor), button).notifyListeners(SWT.Selection, new Event());
    }

    private void library() throws CoreException {
        FormEditor editor = editors.open(LIBRARY, "Devices");
        camera.takeDialog("dialog-next-size", () -> press(editor, "Next size..."));
        camera.takeDialog("dialog-find-and-replace", () -> press(editor, "Find..."));
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        clipboard.setContents(new Object[] { "Id\tSize\tEffective length\nguide-a\t6 Fr\t100 cm\nguide-b\t7 Fr\t90\n" },
                new Transfer[] { TextTransfer.getInstance() });
        clipboard.dispose();
        camera.takeDialog("dialog-paste", () -> {
            NatTable table = Widgets.first(body(editor), NatTable.class, any -> true).orElseThrow();
            Point size = table.getSize();
            robot.clickPainted(table, size.x / 2, size.y / 2);
            robot.keys(SWT.CTRL, 'v');
        });
    }

    private void edit() throws CoreException {
        editors.open(CHART, "Matrix");
        DocumentEditor editor = (DocumentEditor) editors.open(LIBRARY, "Devices");
        editor.reveal(GUIDE);
        robot.settle();
        type(editor, "0,020 in min");
        camera.take("editor-problem-at-a-field");
        camera.takeDialog("dialog-quick-fix", () -> robot.keys(SWT.CTRL, '1'));
        type(editor, "0.020 in min");
        camera.takeDialog("dialog-what-an-edit-changes", () -> run("org.ferrule.ui.fit.showEffect"));
        EditorFixture.page().showView("org.ferrule.ui.devices.revisions");
        camera.take("view-org.ferrule.ui.devices.revisions-filled");
    }

    /** Without keys, which a tooltip that comes up would take. */
    private void type(DocumentEditor editor, String text) {
        Text field = Widgets.labelled(body(editor), "Inner diameter", Text.class);
        field.setFocus();
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        robot.settle();
    }

    private static void run(String command) {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new IllegalStateException(command, e);
        }
    }

    private void chart() throws CoreException {
        FormEditor editor = editors.open(CHART, "Set-up");
        camera.takeDialog("dialog-choose-a-wire", () -> press(editor, "Choose wire..."));
        EditorFixture.page().closeAllEditors(false);
        DocumentEditor library = (DocumentEditor) editors.open(LIBRARY, "Devices");
        camera.takeDialog("dialog-save-picture", () -> savePicture(body(library)));
    }

    private static void savePicture(Composite body) {
        PictureCanvas canvas = Widgets.first(body, PictureCanvas.class, c -> c.picture().isPresent()).orElseThrow();
        MenuItem item = Stream.of(canvas.getMenu().getItems()).filter(i -> i.getText().startsWith("&Save Picture"))
                .findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    private void shelf() throws CoreException {
        ShelfEditor editor = (ShelfEditor) editors.open("laboratory.shelf.json", "Shelf");
        camera.takeDialog("dialog-import-a-sheet", () -> editor.shelf().sheets().takeIn(sheet()));
    }

    /** A delivery of what is there, and of what is not. */
    private Path sheet() {
        try {
            Path sheet = Files.createTempFile("delivery", ".csv");
            sheet.toFile().deleteOnExit();
            return Files.writeString(sheet, "item,name,lot,expiry,quantity\nbrn-sheath-6fr-11,,BS6-2508,2028-08-31,4\n"
                    + "brn-sheath-6fr-11,,BS6-2701,2030-01-31,10\nnew-guide,Guide catheter 6 Fr,G-1,2029-05-31,2\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void caseDocument() throws CoreException {
        CaseEditor editor = (CaseEditor) editors.open("case-calcified-bend-6-fr.case.json", "Ladder");
        robot.waitFor("a plan", () -> editor.live().shown().isPresent() && !editor.live().stale());
        robot.click(editor.ladder().ladder().canvas(), 4, 4);
        camera.take("editor-log-form", () -> robot.type("f"));
        robot.key(SWT.CR);
        robot.waitFor("a plan", () -> !editor.live().stale());
        camera.take("editor-ladder-after-a-failure");
        camera.takeDialog("dialog-close-case", () -> press(editor, "Close case..."));
    }
}
