/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.ferrule.model.AfterUseRule;
import org.ferrule.model.Allowance;
import org.ferrule.model.ChanceLimit;
import org.ferrule.model.ClearanceRule;
import org.ferrule.model.Document;
import org.ferrule.model.FlowLimit;
import org.ferrule.model.RatioBand;
import org.ferrule.model.Span;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;
import org.ferrule.ui.edit.contents.Group;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ModelLabels;

/** What rules are called in the tree: by what they apply to. */
final class RuleLabels extends LabelProvider {

    private static final int MOST_KINDS = 2;

    private final ModelItemProviderAdapterFactory adapters;

    RuleLabels(ModelItemProviderAdapterFactory adapters) {
        this.adapters = adapters;
    }

    @Override
    public String getText(Object element) {
        if (element instanceof Group group) {
            return ModelLabels.feature(group.reference()) + " (" + group.members().size() + ")";
        }
        if (element instanceof Document) {
            return "General";
        }
        if (element instanceof Span span) {
            return (span.isSetFigure() ? span.getFigure().getLiteral() : "no figure yet") + of(span.getKinds());
        }
        if (element instanceof ClearanceRule rule) {
            return kinds(rule.getInner(), "any device") + " in " + kinds(rule.getOuter(), "any device");
        }
        return element instanceof AfterUseRule rule ? kinds(rule.getKinds(), "any balloon") : limit((EObject) element);
    }

    /** A limit is called by what it is for and how far it goes, since several of a kind may stand side by side. */
    private String limit(EObject element) {
        if (element instanceof FlowLimit limit) {
            return (limit.isSetUse() ? limit.getUse().getLiteral() : "no use yet") + amount(", at least ",
                    limit.getLeast());
        }
        if (element instanceof Allowance allowance) {
            return (allowance.isSetPurpose() ? allowance.getPurpose().getLiteral() : "no purpose yet")
                    + (allowance.getLength() == null ? "" : ", " + allowance.getLength().text());
        }
        if (element instanceof RatioBand band) {
            return (band.isSetUse() ? band.getUse().getLiteral() : "no ratio yet") + amount(" from ", band.getLow())
                    + amount(" to ", band.getHigh()) + (band.getMeaning() == null ? "" : ": " + band.getMeaning());
        }
        return element instanceof ChanceLimit limit
                ? limit.getGreatest() == null ? "no chance yet" : amount("at most ", limit.getGreatest())
                : ModelLabels.object(adapters, element);
    }

    private static String amount(String lead, BigDecimal number) {
        return number == null ? "" : lead + number.toPlainString();
    }

    private static String of(List<? extends Enumerator> kinds) {
        return kinds.isEmpty() ? "" : " of " + kinds(kinds, "");
    }

    private static String kinds(List<? extends Enumerator> kinds, String none) {
        String words = kinds.stream().limit(MOST_KINDS).map(Enumerator::getLiteral).collect(Collectors.joining(", "));
        return kinds.isEmpty() ? none : kinds.size() > MOST_KINDS ? words + " ..." : words;
    }

    @Override
    public Image getImage(Object element) {
        return element instanceof Group ? Icons.LINE.image() : Icons.RULES.image();
    }
}
