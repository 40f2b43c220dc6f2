/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.ferrule.ui.look.ModelLabels;

/** Gives one feature of an object another value. */
final class ValueChange {

    private final DocumentSession session;
    private final EObject object;
    private final EStructuralFeature feature;

    ValueChange(DocumentSession session, EObject object, EStructuralFeature feature) {
        this.session = session;
        this.object = object;
        this.feature = feature;
    }

    void to(Object value) {
        Object wanted = value == null || isEmptyList(value) ? SetCommand.UNSET_VALUE : value;
        if (!isAlready(wanted)) {
            session.execute(named(SetCommand.create(session.domain(), object, feature, wanted)));
        }
    }

    private Command named(Command command) {
        return new CommandWrapper("Change of " + ModelLabels.feature(feature).toLowerCase(), "", command);
    }

    private boolean isAlready(Object wanted) {
        boolean stated = object.eIsSet(feature);
        return wanted == SetCommand.UNSET_VALUE ? !stated
                : stated && Objects.equals(comparable(object.eGet(feature)), comparable(wanted));
    }

    private static Object comparable(Object value) {
        return value instanceof Collection<?> values ? List.copyOf(values) : value;
    }

    private static boolean isEmptyList(Object value) {
        return value instanceof Collection<?> values && values.isEmpty();
    }
}
