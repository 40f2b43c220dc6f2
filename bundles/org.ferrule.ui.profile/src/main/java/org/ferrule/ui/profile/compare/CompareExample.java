/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.picture.Picture;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.plot.ProfilePlot;
import org.ferrule.profile.plot.View;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** Three balloons of the demo over each other, with the lumen of a guide extension, near their tips. */
public class CompareExample implements HelpPicture {

    private static final double HEIGHT_MM = 104;
    private static final Length FROM = Length.of("-2", LengthUnit.MILLIMETRE);
    private static final Length TO = Length.of("45", LengthUnit.MILLIMETRE);
    private static final CompareRequest ASKED = new CompareRequest(
            List.of("dun-sc-300-15", "dun-nc-300-15", "kol-scoring-300-15"), Landmark.TIP,
            List.of("pel-extension-6fr"), "", HelpDemo.RULES);

    @Override
    public Picture draw(double widthMm) throws CoreException {
        Compared compared = Compared.of(ProjectDevices.demo("balloons.devices.json",
                "extensions-and-microcatheters.devices.json"), ASKED);
        ProfileComparison comparison = compared.comparison()
                .orElseThrow(() -> new CoreException(Status.error(compared.problem())));
        return ProfilePlot.picture(comparison, View.whole(comparison).along(FROM, TO), ComparePlot.words(), widthMm,
                HEIGHT_MM);
    }
}
