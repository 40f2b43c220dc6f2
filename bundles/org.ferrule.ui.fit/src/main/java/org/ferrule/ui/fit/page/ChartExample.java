/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.ChartTable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.content.ChartContents;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.model.Axis;
import org.ferrule.model.FitChart;
import org.ferrule.model.Grouping;
import org.ferrule.model.RuleSet;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** Four rows and three columns of a chart of the demo, in which all verdicts occur, as its pages show them. */
public class ChartExample implements HelpPicture {

    private static final List<String> ROWS = List.of("pel-dual-oval-140#delivery", "pel-micro-135",
            "ave-micro-angled-135", "san-rx-tight-150-12");
    private static final List<String> COLUMNS = List.of("hes-workhorse-300", "hes-018-300", "pel-slippery-180");

    @Override
    public Picture draw(double widthMm) throws CoreException {
        FitChart chart = HelpDemo.document("devices-over-wires.chart.json", FitChart.class);
        keep(chart.getOuter(), ROWS);
        keep(chart.getInner(), COLUMNS);
        RuleSet rules = HelpDemo.document(chart.getRules(), RuleSet.class);
        OpenChart open = new OpenChart(chart, HelpDemo.libraries(chart.getLibraries()), rules);
        ChartContent content = ChartContents.of(chart, open.solve(Extensions.ofPlatform().checks(), Progress.SILENT),
                rules, open.libraries().stream().map(LibraryReader::library).toList(), LocalDate.now(),
                Optional.empty());
        return ChartTable.of(content, ReasonWords.english(ShownUnits.now()), widthMm);
    }

    private static void keep(Axis axis, List<String> devices) {
        axis.getKinds().clear();
        axis.getDevices().clear();
        axis.getDevices().addAll(devices);
        axis.setGroupBy(Grouping.NONE);
    }
}
