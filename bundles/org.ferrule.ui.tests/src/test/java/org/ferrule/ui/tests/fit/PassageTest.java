/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.passage.PassageConditions;
import org.ferrule.ui.fit.passage.PassageConditions.Beside;
import org.ferrule.ui.fit.passage.PassageConditions.Bent;
import org.ferrule.ui.fit.passage.PassageQuestion;
import org.ferrule.ui.fit.passage.PassageView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Proposals;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The daily question without a chart. */
class PassageTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";
    private static final String BALLOON = "dun-sc-200-15";
    private static final String LIBRARY = "access-and-guides.devices.json";

    private ChartFixture fixture;
    private PassageView view;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        view = (PassageView) EditorFixture.page().showView(FitIds.PASSAGE_VIEW);
        fixture.robot().waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().hideView(view);
        fixture.close();
    }

    private AskedPair ask() {
        view.ask(fixture.project(), new PassageQuestion(GUIDE, "", "hes-workhorse-190", BALLOON, Direction.TIP_FIRST,
                "", "house.rules.json"));
        return answer(0);
    }

    /** The view asks again what it asked when it was closed; so the answer to another question may be there already. */
    private AskedPair answer(int inside) {
        fixture.robot().waitFor("an answer", () -> view.panel().shown()
                .filter(pair -> pair.question().conditions().inside().size() == inside).isPresent());
        return view.panel().shown().orElseThrow();
    }

    @Test
    void answersAsTheChartDoes() {
        FitAnswer answer = ask().answer();
        new ScreenPicture().take("passage");
        assertEquals(fixture.pair(GUIDE, BALLOON).answer(), answer);
    }

    private boolean says(String words) {
        return Widgets.first(body(), StyledText.class, t -> t.getText().contains(words)).isPresent();
    }

    /** One letter: posted keys do not reach the field any more while a list is open (SWT 3.132 on GTK). */
    private Proposals typeInto(String field, char letter) {
        Text text = Widgets.labelled(body(), field, Text.class);
        text.setFocus();
        fixture.robot().waitFor("the focus", text::isFocusControl);
        fixture.robot().keys(SWT.MOD1, 'a');
        fixture.robot().type(Character.toString(letter));
        return new Proposals(fixture.robot(), body().getShell());
    }

    /** Words that were typed and left must not be taken for "no wire". */
    @Test
    void devicesAreListedWhileTheirNamesAreTypedAndWordsAloneAreNone() {
        typeInto("In place", '6').choose("thin wall, right curve");
        typeInto("To pass", '2').choose("Semi-compliant balloon 2.00 x 15 mm");
        fixture.robot().waitFor("an answer", () -> view.panel().shown().isPresent());
        Proposals wires = typeInto("Over wire", 'w');
        fixture.robot().waitFor("no answer", () -> view.panel().shown().isEmpty());
        assertTrue(says("\u201cw\u201d is no device yet"), "what is missing is told");
        List<String> offered = wires.entries();
        new ScreenPicture().take("passage-proposals");
        assertTrue(offered.stream().allMatch(entry -> entry.contains("guidewire")), offered.toString());
        wires.choose("Workhorse");
        fixture.robot().waitFor("an answer over the wire", () -> view.panel().shown().isPresent());
        assertEquals(GUIDE, view.panel().shown().orElseThrow().question().outer().device().id());
        assertEquals(BALLOON, view.panel().shown().orElseThrow().question().inner().device().id());
    }

    @Test
    void ruleSetsOfOneTitleAreToldApartByTheirPaths() throws CoreException, IOException {
        Combo rules = Widgets.labelled(body(), "Rules", Combo.class);
        fixture.robot().waitFor("one rule set", () -> rules.getItemCount() == 1);
        assertFalse(rules.getToolTipText().contains("house.rules.json"), rules::getToolTipText);
        try (InputStream house = fixture.project().getFile("house.rules.json").getContents()) {
            Projects.write(fixture.project(), "copy.rules.json",
                    new String(house.readAllBytes(), StandardCharsets.UTF_8));
        }
        fixture.robot().waitFor("both rule sets", () -> rules.getItemCount() == 2);
        assertTrue(rules.getItem(0).endsWith("copy.rules.json"), rules.getItem(0));
        assertTrue(rules.getToolTipText().contains("house.rules.json"), rules::getToolTipText);
    }

    @Test
    void followsAnEditOfTheLibraryThatIsNotSaved() {
        FitAnswer before = ask().answer();
        fixture.session(LIBRARY).set(fixture.object(LIBRARY, "devices[" + GUIDE + "]/lumens[0]/sections[0]"),
                ModelPackage.Literals.LUMEN_SECTION__ID, Dimension.parse("0.020 in min"));
        fixture.robot().waitFor("another answer",
                () -> view.panel().shown().map(AskedPair::answer).filter(a -> !a.equals(before)).isPresent());
        assertTrue(before.in().verdict() != view.panel().shown().orElseThrow().answer().in().verdict());
    }

    private AskedPair askBeside(String device) {
        view.ask(fixture.project(), new PassageQuestion(GUIDE, "", "hes-workhorse-190", BALLOON, Direction.TIP_FIRST,
                "", "house.rules.json", new PassageConditions(List.of(new Beside(device, "", false)), "", "",
                        Optional.empty(), false)));
        return answer(1);
    }

    private Composite body() {
        return view.panel().control().getParent();
    }

    @Test
    void aSecondDeviceInsideTakesRoom() {
        Length alone = ask().answer().in().clearance().orElseThrow().nominal();
        Length together = askBeside("dun-sc-250-15").answer().in().clearance().orElseThrow().nominal();
        new ScreenPicture().take("passage-beside");
        assertTrue(together.compareTo(alone) < 0, together.mm() + " mm");
        assertEquals("What else holds (1)",
                Widgets.first(body(), ExpandableComposite.class, any -> true).orElseThrow().getText());
        assertFalse(Widgets.labelled(body(), "Beside", Text.class).getText().isEmpty());
        assertTrue(Widgets.first(body(), StyledText.class, t -> t.getText().contains("Asked: beside")).isPresent());
    }

    @Test
    void whatCannotBeReadIsToldInsteadOfAnAnswer() {
        ask();
        askBeside("dun-sc-250-15");
        Text tip = Widgets.labelled(body(), "Tip beyond", Text.class);
        FormToolkit.ensureVisible(tip);
        fixture.robot().settle();
        fixture.robot().click(tip);
        fixture.robot().type("3");
        fixture.robot().waitFor("no answer", () -> view.panel().shown().isEmpty());
        fixture.robot().type(" cm");
        fixture.robot().waitFor("an answer", () -> view.panel().shown().isPresent());
    }

    @Test
    void severalPicturesCanBeChosen() {
        askBeside("dun-sc-250-15");
        fixture.robot().waitFor("the pictures of a closer look", () -> view.panel().pictures().contains("Flow left"));
        Combo choice = Widgets.first((Composite) view.panel().control(), Combo.class, any -> true).orElseThrow();
        fixture.robot().click(choice);
        fixture.robot().key(SWT.ESC);
        fixture.robot().choose(choice, choice.indexOf("Flow left"));
        fixture.robot().settle();
        new ScreenPicture().take("passage-flow");
        assertTrue(view.panel().picture().orElseThrow().title().contains("Flow left"));
    }

    @Test
    void aBentVesselIsAskedWithItsDiameter() {
        ask();
        view.ask(fixture.project(), new PassageQuestion(GUIDE, "", "hes-workhorse-190", BALLOON, Direction.TIP_FIRST,
                "", "house.rules.json", new PassageConditions(List.of(), "", "",
                        Optional.of(new Bent(true, "15 mm", "", "3 mm")), false)));
        fixture.robot().waitFor("a bend in the question", () -> view.panel().shown().stream()
                .flatMap(pair -> pair.question().conditions().bends().stream())
                .anyMatch(bend -> bend.vessel().equals(Optional.of(Length.ofMm(3)))));
        assertEquals("3 mm", Widgets.labelled(body(), "Vessel", Text.class).getText());
    }
}
