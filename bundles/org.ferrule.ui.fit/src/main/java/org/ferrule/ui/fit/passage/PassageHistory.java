/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.eclipse.ui.IMemento;

/** The last questions, the newest first. */
final class PassageHistory {

    private static final int MOST = 15;
    private static final String ENTRY = "question";

    private final List<PassageQuestion> questions = new ArrayList<>();

    /** While a question is still being filled in, its former state is not worth keeping. */
    void add(PassageQuestion question) {
        questions.remove(question);
        if (!questions.isEmpty() && questions.get(0).isAboutSamePair(question)) {
            questions.remove(0);
        }
        questions.add(0, question);
        if (questions.size() > MOST) {
            questions.remove(MOST);
        }
    }

    List<PassageQuestion> all() {
        return Collections.unmodifiableList(questions);
    }

    void save(IMemento memento) {
        questions.forEach(question -> question.save(memento.createChild(ENTRY)));
    }

    void restore(IMemento memento) {
        for (IMemento entry : memento.getChildren(ENTRY)) {
            questions.add(PassageQuestion.restore(entry));
        }
    }
}
