/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A case refers to devices and techniques by ids; people read their names. */
class CaseNamesTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.openPageWithAnEntry();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private Text guide() {
        return Widgets.labelled(page(), "Guide", Text.class);
    }

    private String name() {
        Text id = guide();
        return Stream.of(id.getParent().getChildren()).dropWhile(each -> each != id).filter(Label.class::isInstance)
                .map(Label.class::cast).findFirst().map(Label::getToolTipText).orElse("");
    }

    @Test
    void theNameOfADeviceStandsBesideItsIdAndFollowsIt() {
        assertEquals("brn-guide-7fr-left-100", guide().getText());
        fixture.robot().waitFor("the name", () -> "Guide catheter 7 Fr, backup-type left curve, 100 cm".equals(name()));
        fixture.robot().replace(guide(), "no-such-guide");
        fixture.robot().key(SWT.CR);
        fixture.robot().waitFor("no name", () -> name().isEmpty());
    }

    @Test
    void aStepOfTheLogIsToldByTheNameOfItsTechnique() {
        Table log = Widgets.first(page(), Table.class, table -> table.getColumnCount() == 3
                && table.getColumn(0).getText().equals("Step")).orElseThrow();
        assertEquals("Small balloon", log.getItem(0).getText());
    }
}
