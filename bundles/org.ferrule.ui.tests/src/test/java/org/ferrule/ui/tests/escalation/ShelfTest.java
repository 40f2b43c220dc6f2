/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.ui.escalation.shelf.ShelfEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Boxes are scanned into a shelf, and its table is edited in place. The check digit of the item's GTIN is that of the GS1
 * General Specifications (computed).
 */
class ShelfTest {

    private static final String GTIN = "06291041500213";

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(CaseSamples.SHELF_FILE, CaseSamples.SHELF);
        robot = fixture.robot();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private ShelfDocument shelf() {
        return (ShelfDocument) fixture.editor().session().document().orElseThrow();
    }

    private StockItem balloon() {
        return shelf().getItems().get(0);
    }

    private String message() {
        return ((ShelfEditor) fixture.editor()).shelf().message();
    }

    private void scan(String code) {
        Text field = Widgets.labelled(fixture.body(), "Scan", Text.class);
        robot.click(field);
        field.setText(code);
        robot.key(SWT.CR);
        robot.settle();
    }

    private Table table() {
        return Widgets.first(fixture.body(), Table.class, any -> true).orElseThrow();
    }

    @Test
    void aScannedBoxBecomesALotOfItsItem() {
        scan("(01)" + GTIN + "(17)280630(10)Z77");
        robot.waitFor("a lot", () -> balloon().getLots().size() == 2);
        assertEquals("Z77", balloon().getLots().get(1).getLot());
        assertEquals("2028-06-30", balloon().getLots().get(1).getExpiry());
        assertEquals("cabinet 2, shelf B", balloon().getLots().get(1).getLocation());
        assertTrue(message().contains("Z77"), this::message);
        new ScreenPicture().take("shelf-scanned");
        fixture.editor().session().undo();
        assertEquals(1, balloon().getLots().size());
    }

    @Test
    void aBoxOfALotThatIsThereIsCountedToIt() {
        scan("(01)" + GTIN + "(17)270228(10)A213");
        robot.waitFor("one more", () -> balloon().getLots().get(0).getQuantity() == 4);
        assertEquals(1, balloon().getLots().size());
    }

    @Test
    void aBoxWithASerialNumberIsNotCountedTwice() {
        scan("(01)" + GTIN + "(17)280630(21)S77");
        robot.waitFor("a lot", () -> balloon().getLots().size() == 2);
        scan("(01)" + GTIN + "(17)280630(21)S77");
        robot.waitFor("a refusal", () -> message().contains("S77 is on the shelf already"));
        assertEquals(2, balloon().getLots().size());
        assertEquals(1, balloon().getLots().get(1).getQuantity());
        scan("(01)" + GTIN + "(17)280630(21)S78");
        robot.waitFor("another box", () -> balloon().getLots().size() == 3);
    }

    @Test
    void anItemThatIsAddedAfterARemovalHasAnIdOfItsOwn() {
        press("Add item");
        String first = shelf().getItems().get(shelf().getItems().size() - 1).getId();
        robot.key(SWT.ESC);
        fixture.editor().session().execute(RemoveCommand.create(fixture.editor().session().domain(), balloon()));
        robot.settle();
        press("Add item");
        String second = shelf().getItems().get(shelf().getItems().size() - 1).getId();
        assertNotEquals(first, second);
        robot.key(SWT.ESC);
    }

    private void press(String button) {
        int before = shelf().getItems().size();
        robot.clickUntil("an item", Widgets.button(fixture.body(), button),
                () -> shelf().getItems().size() == before + 1);
    }

    @Test
    void aWrongCodeTellsWhere() {
        scan("(01)06291041500214(17)280630");
        assertTrue(message().contains("character 18"), this::message);
        new ScreenPicture().take("shelf-wrong-code");
        assertFalse(fixture.editor().session().dirty());
    }

    @Test
    void aCodeThatNoItemHasCanBecomeAnItem() {
        scan("(01)04012345678901(10)N1");
        assertTrue(message().contains("No item"), this::message);
        robot.click(Widgets.button(fixture.body(), "As new item"));
        robot.waitFor("an item", () -> shelf().getItems().size() == 7);
        assertEquals("N1", shelf().getItems().get(6).getLots().get(0).getLot());
    }

    @Test
    void whatHasExpiredIsFoundByTheFilter() {
        Text filter = Widgets.labelled(fixture.body(), "Filter", Text.class);
        robot.replace(filter, "expired");
        robot.waitFor("the expired burr alone", () -> table().getItemCount() == 1);
        assertEquals("Burr 1.25", table().getItem(0).getText(0));
        assertTrue(Stream.of(table().getItem(0).getText(1).split(", ")).anyMatch(s -> s.contains("expired")));
    }

    @Test
    void aCellIsEditedInPlace() {
        int column = Stream.of(table().getColumns()).map(c -> c.getText()).toList().indexOf("Quantity");
        Rectangle cell = table().getItem(0).getBounds(column);
        robot.clickPainted(table(), cell.x + 8, cell.y + cell.height / 2);
        robot.keyPainted(table(), SWT.F2);
        robot.waitFor("an editor", () -> Widgets.first(table(), Text.class, any -> true).isPresent());
        robot.type("7");
        robot.key(SWT.CR);
        robot.waitFor("the quantity", () -> balloon().getLots().get(0).getQuantity() == 7);
    }
}
