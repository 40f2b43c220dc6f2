/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.List;
import java.util.function.Supplier;

import org.ferrule.ui.document.DeviceReference;

/** Adds the devices that are chosen somewhere to those whose profiles are compared. */
public final class CompareProfiles extends DeviceCommand {

    private static final String COMMAND = "org.ferrule.ui.profile.compare";

    /** Creates the action. */
    public CompareProfiles(Supplier<List<DeviceReference>> devices) {
        super("&Compare profiles", COMMAND, devices);
        setToolTipText("Show these devices over each other along their length");
    }
}
