/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.help;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.chart.drawing.LongitudinalDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.translate.DeviceTranslator;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.picture.Picture;
import org.ferrule.ui.Services;
import org.ferrule.ui.help.HelpPicture;
import org.ferrule.ui.help.HelpPictures;
import org.ferrule.ui.picture.PictureUnits;
import org.ferrule.ui.preferences.UnitPreferences;

/** The first balloon of the demo, drawn along its length. */
public class DevicePicture implements HelpPicture {

    private static final double HEIGHT_MM = 44;

    @Override
    public Picture draw(double widthMm) throws CoreException {
        DeviceLibrary library = HelpPictures.demo("balloons.devices.json", DeviceLibrary.class);
        RuleSet rules = rules();
        ReadDevice device = ReadDevice.of(new DeviceTranslator(library).translate(library.getDevices().get(0)), rules);
        return new LongitudinalDrawing(ReasonWords.english(PictureUnits.of(Services.get(UnitPreferences.class))))
                .ofDevice(device, rules, List.of(), widthMm, HEIGHT_MM);
    }

    private static RuleSet rules() throws CoreException {
        try {
            return RuleTranslator
                    .translate(HelpPictures.demo("house.rules.json", org.ferrule.model.RuleSet.class));
        } catch (RuleSetException e) {
            throw new CoreException(Status.error("The rules of the demo cannot be used", e));
        }
    }
}
