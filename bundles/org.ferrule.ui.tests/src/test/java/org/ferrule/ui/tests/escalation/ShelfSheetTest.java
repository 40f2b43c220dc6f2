/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockLot;
import org.ferrule.ui.escalation.shelf.SheetExchange;
import org.ferrule.ui.escalation.shelf.ShelfEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A shelf goes into a sheet; a sheet comes back after its changes were looked at, and can be undone at once. */
class ShelfSheetTest {

    @TempDir
    private Path folder;
    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(CaseSamples.SHELF_FILE, CaseSamples.SHELF);
        robot = fixture.robot();
    }

    @AfterEach
    void close() throws CoreException {
        dialog().ifPresent(Shell::close);
        fixture.close();
    }

    private SheetExchange sheets() {
        return ((ShelfEditor) fixture.editor()).shelf().sheets();
    }

    private StockLot lot() {
        return ((ShelfDocument) fixture.editor().session().document().orElseThrow()).getItems().get(0).getLots()
                .get(0);
    }

    private static Optional<Shell> dialog() {
        return Stream.of(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals("Import sheet"))
                .filter(Shell::isVisible).findFirst();
    }

    private Shell takeIn(Path sheet) {
        sheets().takeIn(sheet);
        robot.waitFor("the dialog", () -> dialog().isPresent());
        return dialog().orElseThrow();
    }

    private static Table table(Shell dialog) {
        return Widgets.first(dialog, Table.class, any -> true).orElseThrow();
    }

    private static Button take(Shell dialog) {
        return Widgets.button(dialog, "Take over");
    }

    @ParameterizedTest
    @ValueSource(strings = { "shelf.csv", "shelf.xlsx" })
    void whatIsExportedChangesNothingWhenItComesBack(String name) throws IOException, CoreException {
        Path sheet = folder.resolve(name);
        sheets().files().write(sheet);
        Shell dialog = takeIn(sheet);
        assertEquals(0, table(dialog).getItemCount());
        assertFalse(take(dialog).isEnabled());
        robot.clickUntil("no dialog", Widgets.button(dialog, "Cancel"), () -> dialog().isEmpty());
        assertFalse(fixture.editor().session().dirty());
    }

    @Test
    void aChangeIsShownBeforeItIsTakenOverAndUndoneInOneStep() throws IOException {
        int before = lot().getQuantity();
        Path sheet = Files.writeString(folder.resolve("delivery.csv"), "item,lot,expiry,quantity\n" + id() + ","
                + lot().getLot() + "," + lot().getExpiry() + "," + (before + 5) + "\nnew-item,N1,2029-01-31,2\n");
        Shell dialog = takeIn(sheet);
        assertEquals(id(), table(dialog).getItem(0).getText(1));
        assertEquals(2, table(dialog).getItemCount());
        new ScreenPicture().take("shelf-import");
        robot.clickUntil("more units", take(dialog), () -> lot().getQuantity() == before + 5);
        new ScreenPicture().take("shelf-imported");
        fixture.editor().session().undo();
        assertEquals(before, lot().getQuantity());
        assertFalse(fixture.editor().session().dirty());
    }

    private String id() {
        return ((ShelfDocument) fixture.editor().session().document().orElseThrow()).getItems().get(0).getId();
    }

    @Test
    void aFaultIsShownWithItsRowAndNothingCanBeTakenOver() throws IOException {
        Path sheet = Files.writeString(folder.resolve("broken.csv"), "item,lot,expiry,quantity\na,A,soon,1\n");
        Shell dialog = takeIn(sheet);
        assertFalse(take(dialog).isEnabled());
        assertEquals("2", table(dialog).getItem(0).getText(0));
        assertEquals("soon", table(dialog).getItem(0).getText(2));
        new ScreenPicture().take("shelf-import-fault");
    }

    private void assertRefused(Path sheet, String words) {
        Shell dialog = takeIn(sheet);
        robot.waitFor(words, () -> Widgets.all(dialog, Text.class).anyMatch(text -> text.getText().contains(words)));
        new ScreenPicture().take("shelf-import-refused");
        assertFalse(take(dialog).isEnabled());
        robot.key(SWT.ESC);
        robot.waitFor("no dialog", () -> dialog().isEmpty());
        assertFalse(fixture.editor().session().dirty());
    }

    @Test
    void whatIsNoSheetIsToldAndNothingCanBeTakenOver() throws IOException {
        assertRefused(folder.resolve("gone.csv"), "there is no such file");
        assertRefused(Files.writeString(folder.resolve("shelf.doc"), "item"), "No format is known for shelf.doc");
        assertRefused(Files.write(folder.resolve("cut.xlsx"), new byte[] { 'P', 'K', 3, 4, 20, 0 }), "1 fault");
        assertRefused(Files.writeString(folder.resolve("quote.csv"), "item,lot\n\"a,A\n"), "1 fault");
        assertRefused(Files.writeString(folder.resolve("empty.csv"), ""), "fault");
    }
}
