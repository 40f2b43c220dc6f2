/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The limits of a rule set beside its clearances. */
class RuleLimitsTest {

    private EditorFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        fixture = new EditorFixture(Samples.RULES_FILE, Samples.RULES);
        robot = fixture.robot();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private RuleSet rules() {
        return (RuleSet) fixture.editor().session().document().orElseThrow();
    }

    private Tree tree() {
        return Widgets.first(fixture.body(), Tree.class, any -> true).orElseThrow();
    }

    private void choose(String group) {
        TreeItem item = Stream.of(tree().getItems()).filter(i -> i.getText().startsWith(group)).findFirst()
                .orElseThrow(() -> new AssertionError("there is no group " + group));
        robot.click(tree(), item.getBounds().x + 8, item.getBounds().y + item.getBounds().height / 2);
        robot.settle();
    }

    private void addTo(String group) {
        choose(group);
        Button add = Widgets.button(fixture.body(), "Add");
        robot.waitFor("a group to add to", add::isEnabled);
        robot.click(add);
        robot.waitFor("a new member", () -> tree().getSelection()[0].getParentItem() != null);
    }

    private void fill(String label, String text) {
        Text field = Widgets.labelled(fixture.body(), label, Text.class);
        robot.replace(field, text);
        robot.key(SWT.CR);
        robot.settle();
    }

    @Test
    void aShareMayBeTypedInPercent() {
        addTo("Limits of flow");
        fill("Least share of flow", "25 %");
        robot.waitFor("the limit", () -> rules().getFlowLimits().get(0).getLeast() != null);
        assertEquals(new BigDecimal("0.25"), rules().getFlowLimits().get(0).getLeast());
        new ScreenPicture().take("rules-flow-limit");
        assertEquals("no use yet, at least 0.25", tree().getSelection()[0].getText());
    }

    @Test
    void anAllowanceIsALength() {
        addTo("Allowances");
        fill("Length", "8 cm");
        robot.waitFor("the length", () -> rules().getAllowances().get(0).getLength() != null);
        assertEquals("no purpose yet, 8 cm", tree().getSelection()[0].getText());
    }

    @Test
    void aChanceAboveOneIsAnErrorBelowItsField() {
        addTo("Limits of chance");
        fill("Greatest chance", "3");
        robot.waitFor("words below the field", () -> Widgets.all(fixture.body(), StyledText.class)
                .anyMatch(text -> text.getText().contains("at most 1")));
    }

    @Test
    void aSpanMayRunLow() {
        fixture.reveal("spans[0]");
        Button flag = Widgets.labelled(fixture.body(), "Stated figures run low", Button.class);
        robot.click(flag, flag.getSize().y / 2, flag.getSize().y / 2);
        robot.waitFor("the flag", () -> rules().getSpans().get(0).isRunsLow());
        fixture.editor().session().undo();
        assertTrue(!rules().getSpans().get(0).isRunsLow());
    }

    @Test
    void theRulesOfAGroupStandSideBySide() {
        choose("Spans");
        Table table = Widgets.first(fixture.body(), Table.class, any -> true).orElseThrow();
        new ScreenPicture().take("rules-spans");
        assertEquals("inner diameter", table.getItem(0).getText(0));
        robot.click(table, 20, table.getHeaderHeight() + table.getItemHeight() / 2);
        robot.key(SWT.CR);
        robot.waitFor("the fields of the span", () -> Widgets.first(fixture.body(), Label.class,
                label -> label.getText().equals("Below the centre by")).isPresent());
    }
}
