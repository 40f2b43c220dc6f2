/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.growth;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.fit.device.Device;
import org.ferrule.picture.Picture;
import org.ferrule.profile.growth.GrowthComparison;
import org.ferrule.profile.growth.GrowthPlot;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** The growth curves of three balloons of the demo of the same nominal diameter. */
public class GrowthExample implements HelpPicture {

    private static final double HEIGHT_MM = 82;

    @Override
    public Picture draw(double widthMm) throws CoreException {
        Catalogue balloons = HelpDemo.devices("balloons.devices.json");
        List<Device> devices = Stream.of("dun-sc-300-15", "dun-nc-300-15", "kol-scoring-300-15")
                .map(id -> balloons.device(id).device()).toList();
        return GrowthPlot.picture(GrowthComparison.of(devices), GrowthView.words(), widthMm, HEIGHT_MM);
    }
}
