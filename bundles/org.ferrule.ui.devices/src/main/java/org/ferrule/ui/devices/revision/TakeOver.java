/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.engine.revision.Difference;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.ModelLabels;

/** Makes a document say what another revision of it says. */
final class TakeOver {

    private final DocumentSession session;

    TakeOver(DocumentSession session) {
        this.session = session;
    }

    /** Takes over what the earlier side of each difference says, all in one step. */
    void take(List<Difference> differences) {
        CompoundCommand all = new CompoundCommand();
        differences.forEach(difference -> all.append(command(difference)));
        String what = differences.size() == 1
                ? ModelLabels.feature(differences.get(0).feature()).toLowerCase() : differences.size() + " differences";
        session.execute(new CommandWrapper("Take-over of " + what, "", all.unwrap()));
    }

    private Command command(Difference difference) {
        return switch (difference.kind()) {
            case CHANGED -> SetCommand.create(domain(), difference.after(), difference.feature(),
                    difference.valueBefore().map(TakeOver::copy).orElse(SetCommand.UNSET_VALUE));
            case ADDED -> removal(difference);
            case REMOVED -> addition(difference);
        };
    }

    private static Object copy(Object value) {
        return value instanceof List<?> list ? List.copyOf(list) : value;
    }

    private Command removal(Difference difference) {
        EObject part = difference.part().orElseThrow();
        return difference.feature().isMany() ? RemoveCommand.create(domain(), part)
                : SetCommand.create(domain(), difference.after(), difference.feature(), SetCommand.UNSET_VALUE);
    }

    private Command addition(Difference difference) {
        EObject part = difference.part().orElseThrow();
        EObject copy = EcoreUtil.copy(part);
        EStructuralFeature feature = difference.feature();
        if (!feature.isMany()) {
            return SetCommand.create(domain(), difference.after(), feature, copy);
        }
        int place = ((List<?>) difference.before().eGet(feature)).indexOf(part);
        int size = ((List<?>) difference.after().eGet(feature)).size();
        return AddCommand.create(domain(), difference.after(), feature, copy, Math.min(place, size));
    }

    private EditingDomain domain() {
        return session.domain();
    }
}
