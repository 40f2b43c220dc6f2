/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.device.Phase;
import org.ferrule.picture.Picture;
import org.ferrule.profile.required.RequiredLanes;
import org.ferrule.profile.required.RequiredPlot;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/** How thick a balloon of the demo may be for four guide extensions. */
public class RequiredExample implements HelpPicture {

    private static final double HEIGHT_MM = 56;
    private static final int BALLOON = 1;
    private static final RequiredRequest ASKED = new RequiredRequest(List.of("dun-sc-250-15"), BALLOON,
            List.of("pel-extension-5-5fr", "ave-extension-6fr-40", "pel-extension-6fr", "pel-extension-7fr"),
            HelpDemo.RULES, Phase.IN);

    @Override
    public Picture draw(double widthMm) throws CoreException {
        RequiredAnswer answer = RequiredAnswer.of(ProjectDevices.demo("balloons.devices.json",
                "extensions-and-microcatheters.devices.json"), ASKED,
                Extensions.ofPlatform().checks());
        RequiredSize required = answer.required()
                .orElseThrow(() -> new CoreException(Status.error(answer.problem())));
        return RequiredPlot.picture(new RequiredLanes(required, ASKED.phase()), Optional.empty(), RequiredView.words(),
                widthMm, HEIGHT_MM);
    }
}
