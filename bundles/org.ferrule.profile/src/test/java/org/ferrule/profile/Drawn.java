/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Text;

/** What can be found in a picture. */
public final class Drawn {
    private Drawn() {
    }

    /** The names of all groups. */
    public static List<String> ids(Picture picture) {
        List<String> ids = new ArrayList<>();
        addIds(picture.elements(), ids);
        return ids;
    }

    private static void addIds(List<Element> elements, List<String> ids) {
        for (Element element : elements) {
            if (element instanceof Group group) {
                group.frame().id().ifPresent(ids::add);
                addIds(group.elements(), ids);
            }
        }
    }

    /** All texts. */
    public static List<String> texts(Picture picture) {
        List<String> texts = new ArrayList<>();
        addTexts(picture.elements(), texts);
        return texts;
    }

    private static void addTexts(List<Element> elements, List<String> texts) {
        for (Element element : elements) {
            if (element instanceof Group group) {
                addTexts(group.elements(), texts);
            } else if (element instanceof Text text) {
                texts.add(text.string());
            }
        }
    }
}
