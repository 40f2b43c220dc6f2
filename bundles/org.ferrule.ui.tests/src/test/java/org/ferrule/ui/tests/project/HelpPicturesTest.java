/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.picture.Picture;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.help.HelpPage;
import org.ferrule.ui.help.HelpPages;
import org.ferrule.ui.help.HelpPictures;
import org.ferrule.ui.preferences.UnitPreferences;
import org.ferrule.ui.tests.robot.DrawnPicture;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Themes;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages that speak of what can be drawn show it, drawn from the demo, as a reader can see it. */
class HelpPicturesTest {

    private static final String PLACE = "\uFFFC";
    private static final Pattern IMAGE = Pattern.compile("<img src=\"picture:([^\"]*)\" alt=\"([^\"]*)\"/>");
    private static final double WIDTH_MM = 150;
    private static final double STROKE_MM = 0.3;
    /** Nothing on paper is set smaller, and a page of the help is read from as near. */
    private static final double SMALLEST_PT = 6.5;

    private final Robot robot = new Robot();

    /** The pictures of each page that has some. */
    private static Map<String, List<String>> pictures() throws IOException {
        Map<String, List<String>> pictures = new TreeMap<>();
        for (HelpPage page : HelpPages.all()) {
            Matcher images = images(page);
            while (images.find()) {
                pictures.computeIfAbsent(page.id(), id -> new ArrayList<>()).add(images.group(1));
            }
        }
        return pictures;
    }

    private static Matcher images(HelpPage page) throws IOException {
        try (InputStream stream = page.location().openStream()) {
            return IMAGE.matcher(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    private static List<String> all() throws IOException {
        return pictures().values().stream().flatMap(List::stream).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            org.ferrule.ui/help/rules.html                 | reach
            org.ferrule.ui/help/verdicts.html              | verdicts
            org.ferrule.ui.devices/help/devices.html       | device
            org.ferrule.ui.escalation/help/cases.html      | steps
            org.ferrule.ui.escalation/help/techniques.html | setup
            org.ferrule.ui.fit/help/charts.html            | chart
            org.ferrule.ui.fit/help/grounds.html           | across, along
            org.ferrule.ui.fit/help/stack.html             | stack
            org.ferrule.ui.fit/help/sums.html              | sum
            org.ferrule.ui.profile/help/compare.html       | compare
            org.ferrule.ui.profile/help/growth.html        | growth
            org.ferrule.ui.profile/help/required.html      | required
            """)
    void aPageHasItsPictures(String page, String names) throws IOException {
        String bundle = page.substring(0, page.indexOf('/') + 1);
        assertEquals(List.of(names.split(", ")).stream().map(bundle::concat).toList(), pictures().get(page));
    }

    @Test
    void everyPictureIsToldInWordsToo() throws IOException {
        for (HelpPage page : HelpPages.all()) {
            Matcher images = images(page);
            while (images.find()) {
                assertTrue(images.group(2).length() > 30, images.group(1) + ": " + images.group(2));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = { 120, WIDTH_MM })
    void everyPictureIsAsWideAsAskedForAndHoldsAllOfIt(double widthMm) throws IOException, CoreException {
        for (String id : all()) {
            Picture picture = HelpPictures.draw(id, widthMm);
            assertFalse(picture.elements().isEmpty(), id);
            assertEquals(widthMm, picture.widthMm(), id);
            assertEquals(List.of(), DrawnPicture.of(picture).outside(STROKE_MM), id);
        }
    }

    @Test
    void everyPictureCanBeRead() throws IOException, CoreException {
        for (String id : all()) {
            assertTrue(DrawnPicture.of(HelpPictures.draw(id, WIDTH_MM)).smallestPt() >= SMALLEST_PT, id);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            org.ferrule.ui/reach            | effective length, dun-sc-250-15   | hub and valve
            org.ferrule.ui/verdicts         | blocked                           | fits by claim
            org.ferrule.ui.devices/device   | Semi-compliant balloon            | exit port
            org.ferrule.ui.escalation/steps | Guide extension in place          | lot S125-2507
            org.ferrule.ui.escalation/setup | Guide extension 6 Fr, 25 cm tube  | new
            org.ferrule.ui.fit/chart        | Braided microcatheter             | out: blocked
            org.ferrule.ui.fit/across       | balloon in tube lumen             | clearance 0.17
            org.ferrule.ui.fit/along        | Scoring balloon 3.00 x 15 mm      | collar
            org.ferrule.ui.fit/stack        | Guide catheter 6 Fr, right curve, 100 cm | 0.03
            org.ferrule.ui.fit/sum          | What lies side by side            | together
            org.ferrule.ui.profile/compare  | Scoring balloon 3.00 x 15 mm      | L1
            org.ferrule.ui.profile/growth   | Scoring balloon 3.00 x 15 mm      | rated burst pressure
            org.ferrule.ui.profile/required | Guide extension 6 Fr, 25 cm tube  | all fit up to
            """)
    void aPictureShowsWhatItsPageTellsOf(String id, String device, String detail) throws CoreException {
        String words = DrawnPicture.of(HelpPictures.draw(id, WIDTH_MM)).words();
        assertTrue(words.contains(device), words);
        assertTrue(words.contains(detail), words);
    }

    @Test
    void theChartHasEveryVerdict() throws CoreException {
        Picture chart = HelpPictures.draw("org.ferrule.ui.fit/chart", WIDTH_MM);
        assertTrue(DrawnPicture.of(chart).hasGroup("cell:3,2"));
        assertFalse(chart.description().matches("(.* )?0 .*"), chart.description());
    }

    @Test
    void figuresAreInTheUnitsOfTheReader() throws CoreException {
        IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(UnitPreferences.NODE);
        assertTrue(growth().contains("diameter on the bench, mm"), growth());
        preferences.putBoolean(UnitPreferences.shownKey(LengthUnit.MILLIMETRE), false);
        preferences.putBoolean(UnitPreferences.shownKey(LengthUnit.INCH), true);
        try {
            assertTrue(growth().contains("diameter on the bench, in"), growth());
        } finally {
            preferences.remove(UnitPreferences.shownKey(LengthUnit.MILLIMETRE));
            preferences.remove(UnitPreferences.shownKey(LengthUnit.INCH));
        }
    }

    private static String growth() throws CoreException {
        return DrawnPicture.of(HelpPictures.draw("org.ferrule.ui.profile/growth", WIDTH_MM)).words();
    }

    @ParameterizedTest
    @EnumSource
    void picturesStandBetweenTheLines(Themes theme) throws IOException, PartInitException {
        theme.choose(robot);
        try {
            for (Map.Entry<String, List<String>> page : pictures().entrySet()) {
                HelpPages.open(EditorFixture.page(), page.getKey());
                enlarge();
                show(page.getKey(), page.getValue().size(), theme);
            }
        } finally {
            hide();
            Themes.LIGHT.choose(robot);
        }
    }

    private static StyledText text() {
        return Widgets.all(EditorFixture.page().getActivePart().getSite().getShell(), StyledText.class)
                .filter(widget -> widget.getText().contains(PLACE)).findFirst().orElseThrow();
    }

    @Test
    void aPictureIsAsWideAsTheLinesOfItsPage() throws PartInitException {
        HelpPages.open(EditorFixture.page(), "org.ferrule.ui.profile/help/growth.html");
        int small = widthOfPicture(text());
        enlarge();
        robot.waitFor("a larger picture", () -> widthOfPicture(text()) > small);
        hide();
    }

    /** Returns how wide the first picture is, which has to have room. */
    private int widthOfPicture(StyledText text) {
        robot.waitFor("a page with some room", () -> text.getClientArea().width > text.getLeftMargin() * 2);
        int width = text.getStyleRangeAtOffset(text.getText().indexOf(PLACE)).metrics.width;
        int lines = text.getClientArea().width - text.getLeftMargin() - text.getRightMargin();
        assertTrue(width <= lines, width + " in " + lines);
        return width;
    }

    /** Brings the first picture into sight and looks at it. */
    private void show(String id, int number, Themes theme) {
        StyledText text = text();
        widthOfPicture(text);
        assertEquals(number, text.getText().chars().filter(letter -> letter == PLACE.charAt(0)).count(), id);
        text.setTopIndex(text.getLineAtOffset(text.getText().indexOf(PLACE)) - 1);
        robot.settle();
        new ScreenPicture().take("help-" + id.replaceAll("[^a-z]+", "-") + "-" + theme);
    }

    private static void enlarge() {
        IWorkbenchPage page = EditorFixture.page();
        page.setPartState(page.findViewReference(WorkbenchIds.HELP), IWorkbenchPage.STATE_MAXIMIZED);
    }

    private static void hide() {
        IWorkbenchPage page = EditorFixture.page();
        page.hideView(page.findView(WorkbenchIds.HELP));
    }
}
