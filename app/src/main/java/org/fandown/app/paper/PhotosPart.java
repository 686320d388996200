package org.fandown.app.paper;

import java.util.List;

/** The photos of what is wrong, on pages of their own. */
final class PhotosPart {
    private PhotosPart() {}

    static void print(Tag page, List<Photo> photos) {
        if (photos.isEmpty()) {
            return;
        }
        Tag first = page.add("div", "tracepage");
        first.add("h2").text("Photos");
        for (int i = 0; i < photos.size(); i++) {
            Photo photo = photos.get(i);
            String caption = i + 1 + ". " + Words.capital(Words.spaced(Clean.entry(photo.of())));
            Tag box = first.add("div", "photo");
            box.add("div", "strong").text(caption);
            box.add("img")
                    .set("src", "data:image/jpeg;base64," + photo.jpeg())
                    .set("alt", "Photo: " + caption);
        }
    }
}
