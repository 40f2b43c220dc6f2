/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.look.ModelLabels;

/**
 * A column of what devices state themselves, or inherit.
 *
 * @param feature the attribute
 * @param title what stands in its head
 * @param characters how wide it is at first
 */
record AttributeColumn(EAttribute feature, String title, int characters) implements SheetColumn {

    AttributeColumn(EAttribute feature, int characters) {
        this(feature, ModelLabels.feature(feature), characters);
    }

    @Override
    public String id() {
        return feature.getName();
    }

    @Override
    public String explanation() {
        return ModelLabels.description(feature);
    }

    @Override
    public String text(SheetRow row) {
        return row.text(feature);
    }

    @Override
    public boolean inherited(SheetRow row) {
        return row.inherits(feature);
    }

    @Override
    public SortKey key(SheetRow row) {
        if (Features.isFigure(feature)) {
            return row.value(feature) instanceof Dimension dimension && dimension.readable()
                    ? SortKey.of(dimension.label()) : null;
        }
        return SortKey.of(text(row));
    }

    @Override
    public Optional<EAttribute> attribute() {
        return Optional.of(feature);
    }

    @Override
    public Optional<String> locked(SheetRow row) {
        return Optional.empty();
    }

    @Override
    public Command command(EditingDomain domain, DeviceParts device, Object value) {
        return SetCommand.create(domain, device, feature, value == null ? SetCommand.UNSET_VALUE : value);
    }
}
