/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.ui.escalation.CaseEditor;
import org.ferrule.ui.escalation.EscalationIds;
import org.ferrule.ui.escalation.ready.ReadyView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The view that sets cases against techniques. */
class ReadyTest {

    private CaseFixture fixture;
    private ReadyView view;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        view = (ReadyView) EditorFixture.page().showView(EscalationIds.READY_VIEW);
        fixture.robot().waitFor("the case", () -> table().getItemCount() == 1 && table().getColumnCount() > 1);
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().hideView(view);
        fixture.close();
    }

    private Table table() {
        return view.table();
    }

    private Map<String, String> marks() {
        Map<String, String> marks = new TreeMap<>();
        TableItem row = table().getItem(0);
        for (int i = 1; i < table().getColumnCount(); i++) {
            marks.put(table().getColumn(i).getText(), row.getText(i).substring(2));
        }
        return marks;
    }

    @Test
    void tellsByAWordWhatIsReady() {
        new ScreenPicture().take("ready");
        assertEquals("ready", marks().get("Small balloon"));
        assertEquals("last one", marks().get("Guide extension in place"));
        assertEquals("missing", marks().get("Laser"));
        assertEquals("not possible", marks().get("Rotational burr"), "nobody says that the plaque is calcified");
    }

    @Test
    void theRowThatIsSelectedIsMarkedAsAWhole() {
        table().setSelection(0);
        table().forceFocus();
        fixture.robot().settle();
        fixture.robot().pause(300);
        List<RGB> grounds = new ArrayList<>();
        Image image = new Image(table().getDisplay(), table().getClientArea().width, table().getClientArea().height);
        GC gc = new GC(table());
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData pixels = image.getImageData();
        image.dispose();
        for (int i = 0; i < 3; i++) {
            Rectangle cell = table().getItem(0).getBounds(i);
            grounds.add(pixels.palette.getRGB(pixels.getPixel(cell.x + cell.width - 10, cell.y + cell.height / 2)));
        }
        assertEquals(1, grounds.stream().distinct().count(), grounds::toString);
        assertNotEquals(grounds.get(0), pixels.palette.getRGB(pixels.getPixel(10, pixels.height - 10)),
                "not the ground of the table");
    }

    @Test
    void aClickOpensTheCaseAtTheStep() {
        fixture.robot().waitForJobs();
        fixture.robot().settle();
        int column = IntStream.range(1, table().getColumnCount())
                .filter(i -> table().getColumn(i).getText().equals("Guide extension in place")).findFirst()
                .orElseThrow();
        Rectangle cell = table().getItem(0).getBounds(column);
        fixture.robot().clickPainted(table(), cell.x + 10, cell.y + cell.height / 2);
        fixture.robot().waitFor("the case", () -> EditorFixture.page().getActiveEditor() instanceof CaseEditor);
        CaseEditor editor = (CaseEditor) EditorFixture.page().getActiveEditor();
        fixture.robot().waitFor("the step", () -> editor.ladder().ladder().selected()
                .filter(rung -> rung.move().id().equals("extension")).isPresent());
        assertTrue(editor.live().shown().isPresent());
    }
}
