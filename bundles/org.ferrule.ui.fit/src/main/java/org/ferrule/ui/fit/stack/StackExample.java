/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.chart.drawing.StackDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** Five devices of the demo in each other, as the view draws them. */
public class StackExample implements HelpPicture {

    private static final double HEIGHT_MM = 64;
    private static final StackRequest ASKED = new StackRequest(
            List.of(StackEntry.of("brn-sheath-6fr-11"), StackEntry.of("brn-guide-6fr-right-100").ahead("85 cm"),
                    StackEntry.of("pel-extension-6fr").ahead("3 cm"), StackEntry.of("dun-sc-250-15").ahead("4 cm"),
                    StackEntry.of("hes-workhorse-190").ahead("3 cm")),
            "", HelpDemo.RULES);

    @Override
    public Picture draw(double widthMm) throws CoreException {
        ProjectDevices devices = ProjectDevices.demo("access-and-guides.devices.json",
                "extensions-and-microcatheters.devices.json", "balloons.devices.json", "wires.devices.json");
        AnsweredStack stack = new StackAnswerer(devices, ASKED).answer();
        return new StackDrawing(ReasonWords.english(ShownUnits.first()))
                .of(stack.answer(), Phase.IN, widthMm, HEIGHT_MM);
    }
}
