/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.grounds;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.picture.Picture;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.passage.PassageAnswerer;
import org.ferrule.ui.fit.passage.PassageQuestion;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** A scoring balloon of the demo in a guide extension, in which it is tight, as the view of grounds draws it. */
abstract class ExamplePair implements HelpPicture {

    private static final PassageQuestion ASKED = new PassageQuestion("pel-extension-6fr", "", "hes-workhorse-190",
            "kol-scoring-300-15", Direction.TIP_FIRST, "", HelpDemo.RULES);

    @Override
    public Picture draw(double widthMm) throws CoreException {
        ProjectDevices devices = ProjectDevices.demo("extensions-and-microcatheters.devices.json",
                "balloons.devices.json", "wires.devices.json", "bench.devices.json");
        AskedPair pair = new PassageAnswerer(devices, Extensions.ofPlatform().checks()).answer(ASKED);
        return draw(pair, pair.answer().in(Phase.IN), ReasonWords.english(ShownUnits.now()), widthMm);
    }

    /** Draws the pair going in. */
    abstract Picture draw(AskedPair pair, PhaseAnswer answer, ReasonWords words, double widthMm);
}
