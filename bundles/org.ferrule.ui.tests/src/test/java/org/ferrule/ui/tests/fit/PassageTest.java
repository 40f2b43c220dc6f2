/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.PartInitException;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.passage.PassageQuestion;
import org.ferrule.ui.fit.passage.PassageView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
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
        fixture.robot().waitFor("an answer", () -> view.panel().shown().isPresent());
        return view.panel().shown().orElseThrow();
    }

    @Test
    void answersAsTheChartDoes() {
        FitAnswer answer = ask().answer();
        new ScreenPicture().take("passage");
        assertEquals(fixture.pair(GUIDE, BALLOON).answer(), answer);
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
}
