/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.List;
import java.util.function.Predicate;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.section.PartSection;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.proposal.ReferencePickers;
import org.ferrule.ui.look.ModelLabels;

/** The conditions of a chart as a section: the same on the set-up page and beside the matrix. */
public final class ConditionSection {

    private static final Predicate<Device> WIRES = device -> device.kind() == DeviceKind.GUIDEWIRE;

    private ConditionSection() {
    }

    /** Creates the section in a column of a form. */
    public static PartSection create(DocumentSession session, IManagedForm managed, Composite column,
            LibraryDevices devices, ReferencePickers pickers) {
        PartSection section = new PartSection(session, managed, column, "Conditions",
                Literals.FIT_CHART__CONDITIONS, form -> {
                    form.choice(Literals.CONDITIONS__DIRECTION);
                    form.named(Literals.CONDITIONS__WIRE, devices::name).proposing(devices.proposals(WIRES))
                            .explained("Id of the wire that the devices run on");
                    form.dimension(Literals.CONDITIONS__REACH);
                    form.flag(Literals.CONDITIONS__AFTER_INFLATION)
                            .explained(ModelLabels.description(Literals.CONDITIONS__AFTER_INFLATION));
                });
        section.addPicking("Choose wire...", Literals.CONDITIONS__WIRE,
                () -> pickers.devices(List.of(), WIRES, false));
        new ConditionBlocks(session, managed, section, devices, pickers).add();
        return section;
    }
}
