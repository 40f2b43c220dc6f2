/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.Locale;

import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.IContentProposalProvider;

/**
 * Proposes words that contain what is typed.
 *
 * @param words all of them
 */
record WordProposals(List<String> words) implements IContentProposalProvider {

    @Override
    public IContentProposal[] getProposals(String contents, int position) {
        String typed = contents.toLowerCase(Locale.ROOT);
        return words.stream().filter(word -> word.toLowerCase(Locale.ROOT).contains(typed) && !word.equals(contents))
                .map(ContentProposal::new).toArray(IContentProposal[]::new);
    }
}
