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
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.help.HelpPage;
import org.ferrule.ui.help.HelpPages;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.Test;

/** The pages of the help can be read, and their links lead somewhere. */
class HelpTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\":]*)\"");

    private final Robot robot = new Robot();

    @Test
    void everyPageIsShown() throws PartInitException {
        assertFalse(HelpPages.all().isEmpty());
        for (HelpPage page : HelpPages.all()) {
            HelpPages.open(EditorFixture.page(), page.id());
            robot.settle();
            assertFalse(shown().contains("cannot be shown"), page.id());
            assertTrue(shown().length() > 200, page.id());
        }
        new ScreenPicture().take("help");
        hide();
    }

    @Test
    void aRowOfATableIsALineOfItsOwn() throws PartInitException {
        HelpPages.open(EditorFixture.page(), "org.ferrule.ui.fit/help/charts.html");
        robot.settle();
        assertTrue(shown().lines().anyMatch(line -> line.endsWith("F5\u2003Sums")), shown());
        hide();
    }

    private static String shown() {
        Composite view = EditorFixture.page().getActivePart().getSite().getShell();
        return Widgets.all(view, StyledText.class).map(StyledText::getText).max((a, b) -> a.length() - b.length())
                .orElse("");
    }

    private static void hide() {
        IWorkbenchPage page = EditorFixture.page();
        page.hideView(page.findView(WorkbenchIds.HELP));
    }

    @Test
    void everyLinkLeadsToAPage() throws IOException {
        List<String> lost = new ArrayList<>();
        for (HelpPage page : HelpPages.all()) {
            String folder = page.id().substring(0, page.id().lastIndexOf('/') + 1);
            Matcher links = LINK.matcher(text(page));
            while (links.find()) {
                if (HelpPages.find(folder + links.group(1)).isEmpty()) {
                    lost.add(page.id() + " -> " + links.group(1));
                }
            }
        }
        assertEquals(List.of(), lost);
    }

    private static String text(HelpPage page) throws IOException {
        try (InputStream stream = page.location().openStream()) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void partsHaveTheirPage() {
        assertEquals("org.ferrule.ui/help/rules.html",
                HelpPages.about(WorkbenchIds.RULES_EDITOR).orElseThrow().id());
    }
}
