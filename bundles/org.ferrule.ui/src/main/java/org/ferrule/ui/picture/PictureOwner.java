/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.Optional;

import org.eclipse.core.resources.IContainer;
import org.ferrule.picture.Caption;

/**
 * What whoever shows a picture knows about it when it leaves the program.
 *
 * @param caption what it shows, its sources, its rule set; the date is added
 * @param folder where a file is offered to be saved
 * @param complete whether the picture says all that itself, such as a page does, and needs no words below it
 */
public record PictureOwner(Caption caption, Optional<IContainer> folder, boolean complete) {

    /** Nothing is known but what the picture itself says. */
    public static final PictureOwner UNKNOWN = new PictureOwner(Caption.NONE, Optional.empty(), false);

    /** A page says all there is to say itself. */
    public static final PictureOwner PAGE = new PictureOwner(Caption.NONE, Optional.empty(), true);

    /** An owner with a caption. */
    public static PictureOwner of(Caption caption) {
        return new PictureOwner(caption, Optional.empty(), false);
    }

    /** This owner, whose files go to a folder. */
    public PictureOwner in(IContainer place) {
        return new PictureOwner(caption, Optional.of(place), complete);
    }
}
