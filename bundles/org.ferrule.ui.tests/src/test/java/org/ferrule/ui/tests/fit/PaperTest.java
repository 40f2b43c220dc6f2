/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.PartInitException;
import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.ui.fit.page.ChartExport;
import org.ferrule.ui.fit.page.PaperContent;
import org.ferrule.ui.fit.page.PaperPage;
import org.ferrule.ui.fit.setup.SetUpPage;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of a chart, and their files. */
class PaperTest {

    private ChartFixture fixture;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    @Test
    void showsThePages() {
        PaperPage page = (PaperPage) fixture.editor().setActivePage(PaperPage.ID);
        fixture.robot().waitFor("pages", () -> !page.browser().pages().isEmpty());
        fixture.robot().pause(200);
        new ScreenPicture().take("paper");
        assertTrue(page.browser().pages().get(0).widthMm() > 400, "A3, landscape");
    }

    @Test
    void showsWhatTheChartAsks() {
        fixture.editor().setActivePage(SetUpPage.ID);
        fixture.robot().settle();
        new ScreenPicture().take("setup");
        assertEquals(SetUpPage.ID, fixture.editor().getActivePageInstance().getId());
    }

    @Test
    void exportsPdf(@TempDir Path folder) throws IOException, CoreException {
        ChartContent content = new PaperContent(fixture.editor().answers()).now().orElseThrow();
        ChartExporter pdf = Extensions.ofPlatform().exporters().stream().filter(e -> e.extension().equals("pdf"))
                .findFirst().orElseThrow();
        List<ExportedFile> files = pdf.export(content, "chart", OffsetDateTime.now());
        new ChartExport(EditorFixture.page().getWorkbenchWindow().getShell(), fixture.editor().session().file())
                .write(folder, files);
        byte[] bytes = Files.readAllBytes(folder.resolve("chart.pdf"));
        assertEquals("%PDF-", new String(bytes, 0, 5, StandardCharsets.US_ASCII));
    }
}
