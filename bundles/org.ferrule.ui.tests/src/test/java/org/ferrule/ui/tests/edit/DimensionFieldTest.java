/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.RuleSet;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.preferences.UnitPreferences;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Typing dimensions with real keys. */
class DimensionFieldTest {

    private EditorFixture fixture;
    private Robot robot;
    private Text field;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES);
        robot = fixture.robot();
        fixture.reveal(Samples.RULE);
        field = Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private String required() {
        return ((RuleSet) fixture.editor().session().document().orElseThrow()).getClearances().get(0).getRequired()
                .text();
    }

    private void replaceBy(String text) {
        robot.replace(field, text);
    }

    private String problem() {
        return Widgets.first(fixture.body(), StyledText.class, t -> !t.getText().isEmpty()).map(StyledText::getText)
                .orElse("");
    }

    private List<String> labels() {
        return Widgets.all(fixture.body(), Label.class).map(Label::getText).toList();
    }

    @Test
    void enterChangesTheDocument() {
        replaceBy("0.07 mm");
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> "0.07 mm".equals(required()));
        assertTrue(fixture.editor().isDirty());
    }

    @Test
    void leavingTheFieldChangesTheDocument() {
        replaceBy("0.003 in");
        robot.key(SWT.TAB);
        robot.waitFor("the change", () -> "0.003 in".equals(required()));
    }

    @Test
    void showsWhatIsTypedInPreferredUnits() {
        replaceBy("0.003 in");
        robot.waitFor("millimetres", () -> labels().stream().anyMatch(text -> text.startsWith("0.076 mm")));
    }

    @Test
    void followsThePreferredUnits() {
        IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(UnitPreferences.NODE);
        preferences.putBoolean(UnitPreferences.shownKey(LengthUnit.FRENCH), true);
        try {
            robot.waitFor("French beside the field",
                    () -> labels().stream().anyMatch(text -> text.contains("0.050 mm") && text.endsWith(" Fr")));
        } finally {
            preferences.remove(UnitPreferences.shownKey(LengthUnit.FRENCH));
        }
    }

    @Test
    void decimalCommaIsAnErrorAndChangesNothing() {
        replaceBy("0,07 mm");
        robot.key(SWT.CR);
        robot.waitFor("the problem", () -> problem().startsWith("0,07 mm"));
        robot.pause(200);
        new ScreenPicture().take("dimension-with-comma");
        assertTrue(problem().contains("expected"), problem());
        assertEquals("0.05 mm", required());
        assertFalse(fixture.editor().isDirty());
    }

    @Test
    void escapeBringsTheFormerTextBack() {
        replaceBy("0.07");
        robot.waitFor("the typed text", () -> field.getText().equals("0.07"));
        robot.key(SWT.ESC);
        robot.waitFor("the former text", () -> field.getText().equals("0.05 mm"));
        assertEquals("", problem());
        assertEquals("0.05 mm", required());
    }

    @Test
    void implausibleFigureIsTakenWithAWarning() {
        replaceBy("70 mm");
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> "70 mm".equals(required()));
        assertTrue(problem().contains("implausibly large"), problem());
    }

    @Test
    void unreadableTextWaitsForItsObject() {
        replaceBy("0.07");
        robot.waitFor("the typed text", () -> field.getText().equals("0.07"));
        fixture.reveal("spans[0]");
        fixture.reveal(Samples.RULE);
        field = Widgets.labelled(fixture.body(), Samples.REQUIRED, Text.class);
        assertEquals("0.07", field.getText());
        assertEquals("0.05 mm", required());
    }

    @Test
    void emptyTextLeavesTheDimensionUnstated() {
        robot.click(field);
        robot.keys(SWT.CTRL, 'a');
        robot.key(SWT.DEL);
        robot.key(SWT.CR);
        RuleSet rules = (RuleSet) fixture.editor().session().document().orElseThrow();
        robot.waitFor("no dimension", () -> rules.getClearances().get(0).getRequired() == null);
    }
}
