/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.help;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.chart.drawing.LongitudinalDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Picture;
import org.ferrule.ui.Services;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;
import org.ferrule.ui.picture.PictureUnits;
import org.ferrule.ui.preferences.UnitPreferences;

/** The first balloon of the demo, drawn along its length. */
public class DevicePicture implements HelpPicture {

    private static final double HEIGHT_MM = 44;

    @Override
    public Picture draw(double widthMm) throws CoreException {
        RuleSet rules = HelpDemo.rules();
        ReadDevice device = ReadDevice.of(HelpDemo.devices("balloons.devices.json").devices().get(0).device(), rules);
        return new LongitudinalDrawing(ReasonWords.english(PictureUnits.of(Services.get(UnitPreferences.class))))
                .ofDevice(device, rules, List.of(), widthMm, HEIGHT_MM);
    }
}
