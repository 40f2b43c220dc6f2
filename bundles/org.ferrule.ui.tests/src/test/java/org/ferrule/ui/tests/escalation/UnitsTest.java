/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.UsedUnit;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The boxes that were opened in a case are edited on its page. */
class UnitsTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.openPageWithAnEntry();
        FormToolkit.ensureVisible(Widgets.button(page(), "Add box"));
        fixture.robot().settle();
        table().select(0);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private Table table() {
        return Widgets.first(page(), Table.class, table -> table.getColumnCount() == 3
                && table.getColumn(1).getText().equals("Box")).orElseThrow();
    }

    private List<UsedUnit> units() {
        return fixture.document().getLog().get(0).getUnits();
    }

    @Test
    void eachBoxIsToldWithWhatItWasOpenedForAndItsLot() {
        assertEquals(List.of("1. Small balloon", "A213"),
                Stream.of(0, 2).map(column -> table().getItem(0).getText(column)).toList());
        new ScreenPicture().take("case-boxes");
    }

    @Test
    void aBoxThatWasNotOpenedIsRemovedAndUndoBringsItBack() {
        fixture.robot().clickUntil("no box", Widgets.button(page(), "Remove box"), () -> units().isEmpty());
        assertEquals(0, table().getItemCount());
        fixture.editor().session().undo();
        fixture.robot().waitFor("the box", () -> units().size() == 1 && table().getItemCount() == 1);
    }

    @Test
    void aBoxThatWasOpenedBesideThePlanIsAddedAndUndoTakesItBack() {
        fixture.robot().clickUntil("a second box", Widgets.button(page(), "Add box"), () -> units().size() == 2);
        assertEquals("balloon", units().get(1).getRole());
        assertTrue(Widgets.labelled(page(), "Item", Combo.class).getItemCount() > 1, "the items of the shelf");
        new ScreenPicture().take("case-box-added");
        fixture.editor().session().undo();
        fixture.robot().waitFor("the former box alone", () -> units().size() == 1 && table().getItemCount() == 1);
    }
}
