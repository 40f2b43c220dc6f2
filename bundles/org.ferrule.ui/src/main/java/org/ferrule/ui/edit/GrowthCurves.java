/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.List;
import java.util.function.Supplier;

import org.ferrule.ui.document.DeviceReference;

/** Adds the devices that are chosen somewhere to those whose growth with pressure is shown. */
public final class GrowthCurves extends DeviceCommand {

    private static final String COMMAND = "org.ferrule.ui.profile.growth";

    /** Creates the action. */
    public GrowthCurves(Supplier<List<DeviceReference>> devices) {
        super("&Growth curves", COMMAND, devices);
        setToolTipText("Show over each other how these balloons grow with pressure");
    }
}
