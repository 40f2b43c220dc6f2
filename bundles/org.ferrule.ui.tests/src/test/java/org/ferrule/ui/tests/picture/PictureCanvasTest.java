/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.picture.Point;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.sums.SumsView;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Zooming, copying and saving, with the picture of a calculator. */
class PictureCanvasTest {

    private static final String TITLE = "Save picture";

    private SumsView view;
    private Robot robot;
    private Dialogs dialogs;
    private Composite body;
    private PictureCanvas canvas;

    @BeforeEach
    void open() throws PartInitException {
        view = (SumsView) EditorFixture.page().showView(FitIds.SUMS_VIEW);
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        robot = new Robot();
        dialogs = new Dialogs(robot);
        canvas = view.answer().picture();
        body = canvas.getParent().getParent().getParent();
        pack();
    }

    private void pack() {
        Table list = Widgets.first(body, Table.class, table -> true).orElseThrow();
        TableItem item = Stream.of(list.getItems()).filter(i -> i.getText().equals("Side by side in one lumen"))
                .findFirst().orElseThrow();
        robot.click(list, item.getBounds().x + 20, item.getBounds().y + item.getBounds().height / 2);
        fill("Device 1", "1.2mm");
        fill("Device 2", "3Fr");
        robot.waitFor("a picture", () -> canvas.picture().isPresent());
        robot.click(canvas);
        robot.waitFor("the keyboard", canvas::isFocusControl);
    }

    private void fill(String label, String text) {
        robot.replace(Widgets.labelled(body, label, Text.class), text);
        robot.settle();
    }

    @AfterEach
    void close() {
        EditorFixture.page().hideView(view);
        robot.settle();
    }

    private double widthInSightMm() {
        return canvas.toPicture(canvas.getSize().x, 0).xMm() - canvas.toPicture(0, 0).xMm();
    }

    @Test
    void plusAndMinusZoomAndZeroShowsAll() {
        double whole = widthInSightMm();
        robot.key(SWT.KEYPAD_ADD);
        robot.key(SWT.KEYPAD_ADD);
        assertEquals(whole / (1.25 * 1.25), widthInSightMm(), 0.5);
        new ScreenPicture().take("picture-zoomed");
        robot.key(SWT.KEYPAD_SUBTRACT);
        assertEquals(whole / 1.25, widthInSightMm(), 0.5);
        robot.type("0");
        assertFalse(canvas.zoom().isZoomed());
        assertEquals(whole, widthInSightMm(), 0.01);
    }

    @Test
    void wheelWithCtrlZoomsAboutThePointer() {
        Point before = canvas.toPicture(60, 40);
        double whole = widthInSightMm();
        Event event = new Event();
        event.stateMask = SWT.MOD1;
        event.count = 3;
        event.x = 60;
        event.y = 40;
        canvas.notifyListeners(SWT.MouseVerticalWheel, event);
        assertTrue(widthInSightMm() < whole);
        Point after = canvas.toPicture(60, 40);
        assertEquals(before.yMm(), after.yMm(), 0.5);
    }

    @Test
    void arrowsMoveWhatIsZoomed() {
        for (int i = 0; i < 8; i++) {
            robot.key(SWT.KEYPAD_ADD);
        }
        double left = canvas.toPicture(0, 0).xMm();
        robot.key(SWT.ARROW_RIGHT);
        assertTrue(canvas.toPicture(0, 0).xMm() > left, "the part to the right came in sight");
        robot.key(SWT.ARROW_LEFT);
        assertEquals(left, canvas.toPicture(0, 0).xMm(), 0.01);
    }

    @Test
    void ctrlCCopiesAnImage() {
        robot.keys(SWT.CTRL, 'c');
        ImageData copied = (ImageData) clipboard(ImageTransfer.getInstance());
        double dots = canvas.picture().orElseThrow().widthMm() / 25.4 * 300;
        assertEquals(dots, copied.width, 2);
        assertTrue(copied.height > canvas.picture().orElseThrow().heightMm() / 25.4 * 300, "words stand below it");
    }

    @Test
    void menuCopiesSvgText() {
        dialogs.menu(canvas, 'v');
        robot.waitFor("text in the clipboard", () -> clipboard(TextTransfer.getInstance()) instanceof String text
                && text.startsWith("<?xml"));
        String svg = (String) clipboard(TextTransfer.getInstance());
        assertTrue(svg.contains("Smallest lumen"), svg);
        assertTrue(svg.contains("Ferrule, 20"), "the date");
    }

    private Object clipboard(Transfer transfer) {
        Clipboard clipboard = new Clipboard(canvas.getDisplay());
        try {
            return clipboard.getContents(transfer);
        } finally {
            clipboard.dispose();
        }
    }

    private void save(String file, Dialogs.Work more) {
        dialogs.open(() -> dialogs.menu(canvas, 's'), TITLE, shell -> {
            Text name = Widgets.labelled(shell, "File", Text.class);
            robot.replace(name, file);
            more.in(shell);
            dialogs.close(shell, Widgets.button(shell, "Save"));
        });
    }

    @Test
    void savesEachFormat(@TempDir Path folder) throws IOException {
        for (String ending : new String[] { "svg", "pdf", "png" }) {
            Path file = folder.resolve("sum." + ending);
            save(file.toString(), shell -> new ScreenPicture().take("save-picture"));
            byte[] bytes = Files.readAllBytes(file);
            String start = new String(bytes, 0, 5, StandardCharsets.ISO_8859_1);
            assertEquals(ending.equals("svg") ? "<?xml" : ending.equals("pdf") ? "%PDF-" : "\u0089PNG\r", start);
        }
    }

    @Test
    void chosenFormatGivesTheEnding(@TempDir Path folder) {
        String[] named = new String[1];
        save(folder.resolve("sum.svg").toString(), shell -> {
            Combo format = Widgets.labelled(shell, "Format", Combo.class);
            assertTrue(format.getText().startsWith("SVG"), format.getText());
            format.setFocus();
            robot.key(SWT.ARROW_DOWN);
            robot.settle();
            named[0] = Widgets.labelled(shell, "File", Text.class).getText();
        });
        assertTrue(named[0].endsWith("sum.png"), named[0]);
        assertTrue(Files.exists(folder.resolve("sum.png")));
    }

    /** A folder that is not empty cannot be replaced, whoever runs the test. */
    @Test
    void whatCannotBeReplacedStaysAsItWas(@TempDir Path folder) throws IOException {
        Path inside = Files.createDirectory(folder.resolve("sum.svg")).resolve("theirs");
        byte[] before = "theirs".getBytes(StandardCharsets.UTF_8);
        Files.write(inside, before);
        dialogs.open(() -> dialogs.menu(canvas, 's'), TITLE, shell -> {
            Text name = Widgets.labelled(shell, "File", Text.class);
            robot.replace(name, inside.getParent().toString());
            answerYes(shell, 30);
            robot.key(SWT.CR);
            robot.waitFor("the refusal", () -> !refusal(shell).isEmpty());
            new ScreenPicture().take("save-picture-refused");
            dialogs.close(shell, Widgets.button(shell, "Cancel"));
        });
        assertArrayEquals(before, Files.readAllBytes(inside));
        assertEquals(1, folder.toFile().list().length, "nothing is left beside it");
    }

    private static String refusal(Shell shell) {
        return Widgets.all(shell, Text.class).map(Text::getText).filter(t -> t.contains("could not be saved"))
                .findFirst().orElse("");
    }

    /** The question whether the file may be replaced lies over the dialog; it is answered until it is gone. */
    private void answerYes(Shell dialog, int patience) {
        dialog.getDisplay().timerExec(300, () -> {
            if (!dialog.isDisposed() && refusal(dialog).isEmpty() && patience > 0) {
                answerYes(dialog, patience - 1);
                Stream.of(dialog.getShells()).flatMap(shell -> Widgets.first(shell, Button.class,
                        button -> button.getText().replace("&", "").equals("Yes")).stream()).findFirst()
                        .ifPresent(robot::click);
            }
        });
    }
}
