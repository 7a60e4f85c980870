<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Bowbench</name>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>About Bowbench</source>
        <translation>Über Bowbench</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Works out, checks, plays and prints the bowings of fiddle tunes.</source>
        <translation>Strichfassungen von Geigenstücken ausarbeiten, prüfen, spielen und drucken.</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Free software under the MIT licence. What it is made of, and under which licences:</source>
        <translation>Freie Software unter der MIT-Lizenz. Woraus sie besteht und unter welchen Lizenzen:</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>No licence text came with this part; its home has it.</source>
        <translation>Diesem Teil lag kein Lizenztext bei; er steht auf dessen Webseite.</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>&amp;Copy versions</source>
        <translation>Versionen &amp;kopieren</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>The versions are in the clipboard.</source>
        <translation>Die Versionen sind in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Parts of the program</source>
        <translation>Teile des Programms</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Licence of the part</source>
        <translation>Lizenz des Teils</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>For a report of a fault</source>
        <translation>Für eine Fehlermeldung</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Used for</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <location filename="../../app/about_dialog.py"/>
        <source>Home</source>
        <translation>Webseite</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <location filename="../../app/plan_suits.py"/>
        <location filename="../../app/plan_words.py"/>
        <source>On the beat</source>
        <translation>Auf dem Schlag</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <location filename="../../app/plan_words.py"/>
        <source>On the backbeat</source>
        <translation>Auf dem Backbeat</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <location filename="../../app/plan_words.py"/>
        <source>As each phrase does better</source>
        <translation>Was in jeder Phrase besser passt</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>At places of your own</source>
        <translation>An eigenen Stellen</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>Accents to drive</source>
        <translation>Zu treibende Betonungen</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>Where in the bar the bow is meant to drive with a new down-bow</source>
        <translation>Wo im Takt der Bogen mit einem neuen Abstrich treiben soll</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accents</source>
        <translation>Be&amp;tonungen</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>Accented places of the bar</source>
        <translation>Betonte Stellen des Taktes</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>Bars with accents of their own</source>
        <translation>Takte mit eigenen Betonungen</translation>
    </message>
    <message>
        <location filename="../../app/accent_chooser.py"/>
        <source>Accent at count {label}, {place} quarter notes into the bar</source>
        <translation>Betonung auf Zählzeit {label}, {place} Viertel nach Taktanfang</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>driven by a down-bow</source>
        <translation>getrieben durch einen Abstrich</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>on an up-bow</source>
        <translation>auf einem Aufstrich</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>buried inside a slur</source>
        <translation>verdeckt unter einem Bindebogen</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>not struck</source>
        <translation>nicht angestrichen</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>not struck (a rest)</source>
        <translation>nicht angestrichen (Pause)</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>not struck (a held note)</source>
        <translation>nicht angestrichen (gehaltene Note)</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>not struck (a note that sounds on)</source>
        <translation>nicht angestrichen (weiterklingende Note)</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../app/findings_model.py"/>
        <location filename="../../app/note_words.py"/>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../app/set_report.py"/>
        <location filename="../../app/shelf_pane.py"/>
        <location filename="../../core/planner/account.py"/>
        <location filename="../../core/set_check.py"/>
        <source>, </source>
        <comment>between parts of a sentence</comment>
        <translation>, </translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>{how} on pass {number}</source>
        <translation>{how} in Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <location filename="../../app/note_words.py"/>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../app/proposals.py"/>
        <location filename="../../core/checks/words.py"/>
        <source>bar {number}</source>
        <translation>Takt {number}</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <location filename="../../app/findings_model.py"/>
        <location filename="../../app/note_words.py"/>
        <source>pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <location filename="../../app/accent_strip.py"/>
        <source>{bar}, {beat}</source>
        <translation>{bar}, {beat}</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this &amp;bar</source>
        <translation>In diesem &amp;Takt</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this &amp;phrase</source>
        <translation>In dieser &amp;Phrase</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this pa&amp;rt</source>
        <translation>In diesem T&amp;eil</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In the whole &amp;tune</source>
        <translation>Im ganzen &amp;Stück</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>On the &amp;beat</source>
        <translation>Auf dem &amp;Schlag</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>On the b&amp;ackbeat</source>
        <translation>Auf dem &amp;Backbeat</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As each &amp;phrase does better</source>
        <translation>Was in jeder P&amp;hrase besser passt</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;None</source>
        <translation>&amp;Keine</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As &amp;drawn in this bar</source>
        <translation>Wie in diesem Takt &amp;gezeichnet</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Fiddle</source>
        <translation>&amp;Geige</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Backing</source>
        <translation>&amp;Begleitung</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Click</source>
        <translation>&amp;Klick</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>C&amp;ount-in</source>
        <translation>&amp;Einzähler</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Let it be heard, or not</source>
        <translation>Hörbar oder nicht</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open a lesson, a score or a tune book</source>
        <translation>Lektion, Partitur oder Sammlung öffnen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/dialogs.py"/>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save the lesson</source>
        <translation>Lektion speichern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save the lesson under another name</source>
        <translation>Lektion unter anderem Namen speichern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Unsaved lessons…</source>
        <translation>Nicht &amp;gesicherte Lektionen…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lessons that were not saved when the program ended</source>
        <translation>Lektionen, die beim Ende des Programms nicht gespeichert waren</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Print bowings of the lesson</source>
        <translation>Strichfassungen der Lektion drucken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Set up s&amp;heet…</source>
        <translation>&amp;Blatt einrichten…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Choose what is printed and see its pages</source>
        <translation>Auswählen, was gedruckt wird, und die Seiten ansehen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Export as PDF…</source>
        <translation>Als &amp;PDF exportieren…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Write the printed pages to a PDF file</source>
        <translation>Die gedruckten Seiten in eine PDF-Datei schreiben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Export as A&amp;BC…</source>
        <translation>Als &amp;ABC exportieren…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Write all bowings of the lesson as a tune book in ABC</source>
        <translation>Alle Strichfassungen der Lektion als Sammlung in ABC schreiben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lesson pac&amp;k…</source>
        <translation>&amp;Lektionspaket…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Make sheets and files of many lessons in one folder, with a zip of all</source>
        <translation>Blätter und Dateien vieler Lektionen in einem Ordner, dazu alles als Zip-Datei</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Close window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Close the window</source>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/undo_desk.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take back the last edit</source>
        <translation>Letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/undo_desk.py"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do again what was taken back</source>
        <translation>Zurückgenommenes wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open &amp;pasted tune</source>
        <translation>Kopiertes Stück ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open the tune (ABC or MusicXML text) that was copied</source>
        <translation>Das kopierte Stück (ABC- oder MusicXML-Text) öffnen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Slur</source>
        <translation>&amp;Binden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Slur to the next note or separate the two; a selection becomes one slur</source>
        <translation>An die nächste Note binden oder beide trennen; eine Auswahl wird ein Bindebogen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>S&amp;eparate bows</source>
        <translation>&amp;Einzelstriche</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Give the note, or each selected note, a bow of its own</source>
        <translation>Der Note oder jeder ausgewählten Note einen eigenen Strich geben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Separate</source>
        <translation>Einzeln</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Hook to the next note</source>
        <translation>An nächste Note an&amp;hängen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Same direction, with a stop between</source>
        <translation>Dieselbe Richtung mit einem Halt dazwischen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Hook</source>
        <translation>Anhängen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Turn the bow</source>
        <translation>Strich &amp;umdrehen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Turn this stroke round and fix it so</source>
        <translation>Diesen Strich umdrehen und so festlegen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix as &amp;down-bow</source>
        <translation>Als &amp;Abstrich festlegen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix this stroke as a down-bow</source>
        <translation>Diesen Strich als Abstrich festlegen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix as &amp;up-bow</source>
        <translation>Als Au&amp;fstrich festlegen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix this stroke as an up-bow</source>
        <translation>Diesen Strich als Aufstrich festlegen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Free the bow</source>
        <translation>Strich &amp;lösen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Let this stroke follow from the strokes before it again</source>
        <translation>Diesen Strich wieder aus den Strichen davor folgen lassen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Free</source>
        <translation>Lösen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Retake</source>
        <translation>Neua&amp;nsatz</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lift and take the direction of the stroke before once more</source>
        <translation>Abheben und noch einmal in die Richtung des Strichs davor gehen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on every &amp;pass</source>
        <translation>Zeichen gilt in &amp;jedem Durchgang</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on every pass</source>
        <translation>Das feste Zeichen gilt in jedem Durchgang</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;1 only</source>
        <translation>Zeichen gilt nur in Durchgang &amp;1</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 1 only</source>
        <translation>Das feste Zeichen gilt nur in Durchgang 1</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;2 only</source>
        <translation>Zeichen gilt nur in Durchgang &amp;2</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 2 only</source>
        <translation>Das feste Zeichen gilt nur in Durchgang 2</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;3 only</source>
        <translation>Zeichen gilt nur in Durchgang &amp;3</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 3 only</source>
        <translation>Das feste Zeichen gilt nur in Durchgang 3</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;4 only</source>
        <translation>Zeichen gilt nur in Durchgang &amp;4</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 4 only</source>
        <translation>Das feste Zeichen gilt nur in Durchgang 4</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accent this place</source>
        <translation>Diese Stelle &amp;betonen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Accent this place of the bar, or stop doing so</source>
        <translation>Diese Stelle des Taktes betonen oder nicht mehr betonen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Cut</source>
        <translation>&amp;Cut</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A cut: a short grace note of the next step up, or take it away</source>
        <translation>Ein Cut: eine kurze Vorschlagsnote eine Stufe höher, oder wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Roll</source>
        <translation>&amp;Roll</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A roll sign over the note, or take it away</source>
        <translation>Ein Roll-Zeichen über der Note, oder wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Turn</source>
        <translation>&amp;Doppelschlag</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A turn sign over the note, or take it away</source>
        <translation>Ein Doppelschlag über der Note, oder wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Bowed triplet</source>
        <translation>Gestrichene &amp;Triole</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Three quick strokes on the note, or take them away</source>
        <translation>Drei schnelle Striche auf der Note, oder wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Add a bowing</source>
        <translation>Strichfassung &amp;hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/bowings_pane.py"/>
        <source>Add a bowing with separate bows</source>
        <translation>Eine Strichfassung mit Einzelstrichen hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Copy this bowing</source>
        <translation>Strichfassung &amp;kopieren</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add a copy of the bowing on the page</source>
        <translation>Eine Kopie der Strichfassung auf dem Blatt hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Rename this bowing</source>
        <translation>Strichfassung &amp;umbenennen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Type another name for the bowing on the page</source>
        <translation>Der Strichfassung auf dem Blatt einen anderen Namen geben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/set_window.py"/>
        <source>Move &amp;up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/bowings_pane.py"/>
        <source>Move the bowing up in the list</source>
        <translation>Die Strichfassung in der Liste nach oben rücken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/set_window.py"/>
        <source>Move &amp;down</source>
        <translation>Nach u&amp;nten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/bowings_pane.py"/>
        <source>Move the bowing down in the list</source>
        <translation>Die Strichfassung in der Liste nach unten rücken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>De&amp;lete this bowing</source>
        <translation>Strichfassung &amp;löschen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take the bowing on the page away</source>
        <translation>Die Strichfassung auf dem Blatt entfernen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Next bowing</source>
        <translation>Näch&amp;ste Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the next bowing on the page</source>
        <translation>Die nächste Strichfassung aufs Blatt holen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Previous bowing</source>
        <translation>&amp;Vorige Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the previous bowing on the page</source>
        <translation>Die vorige Strichfassung aufs Blatt holen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>C&amp;ompare bowings</source>
        <translation>Strichfassungen ver&amp;gleichen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show bowings under one another, line by line, with what tells them apart</source>
        <translation>Strichfassungen Zeile für Zeile untereinander zeigen, mit ihren Unterschieden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell the others &amp;from this one</source>
        <translation>Andere von &amp;dieser unterscheiden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark what tells the others from the bowing that is worked on</source>
        <translation>Markieren, worin sich die anderen von der bearbeiteten Strichfassung unterscheiden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Work out the best bowing</source>
        <translation>Beste Strichfassung &amp;ausarbeiten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Work out the best bowing for the accents and show it</source>
        <translation>Die beste Strichfassung für die Betonungen ausarbeiten und zeigen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/plan_desk.py"/>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mend &amp;from here on</source>
        <translation>Ab &amp;hier neu ausarbeiten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Keep all up to the marked note and work out the rest afresh</source>
        <translation>Alles bis zur markierten Note behalten und den Rest neu ausarbeiten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Carry on this bowing</source>
        <translation>Strichfassung &amp;fortführen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Propose the rest in a style, from the bars that are slurred or marked, or selected</source>
        <translation>Den Rest in einem Stil vorschlagen, ausgehend von den gebundenen, bezeichneten oder ausgewählten Takten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>W&amp;hat the style does…</source>
        <translation>Was der &amp;Stil tut…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Read what was found in the lessons of the chosen style</source>
        <translation>Lesen, was in den Lektionen des gewählten Stils gefunden wurde</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Learn a style from the shelf…</source>
        <translation>Stil aus dem Regal &amp;lernen…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Learn how the lessons that are found on the shelf are slurred</source>
        <translation>Lernen, wie die im Regal gefundenen Lektionen gebunden sind</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Planner beside the page</source>
        <translation>&amp;Planer neben dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show what the planner is set to</source>
        <translation>Zeigen, wie der Planer eingestellt ist</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Which accents s&amp;uit this tune</source>
        <translation>&amp;Welche Betonungen zum Stück passen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/plan_controls.py"/>
        <source>Compare the accent plans on this tune</source>
        <translation>Die Betonungspläne an diesem Stück vergleichen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add &amp;starting versions</source>
        <translation>Aus&amp;gangsfassungen hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/plan_controls.py"/>
        <source>Add four bowings to start from: separate bows, on the beat, backbeat, smooth</source>
        <translation>Vier Strichfassungen für den Anfang hinzufügen: Einzelstriche, auf dem Schlag, Backbeat, fließend</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Take the preview</source>
        <translation>Vorschau ü&amp;bernehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the previewed bowing in the place of this one</source>
        <translation>Die Strichfassung der Vorschau an die Stelle dieser setzen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Ta&amp;ke the preview as a new bowing</source>
        <translation>Vorschau als &amp;neue Strichfassung übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Keep this bowing and add the previewed one</source>
        <translation>Diese Strichfassung behalten und die der Vorschau hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take this &amp;bar of the preview only</source>
        <translation>Nur diesen &amp;Takt der Vorschau übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take the bar of the marked note, or those of the selection, and drop the others</source>
        <translation>Den Takt der markierten Note oder die der Auswahl übernehmen und die anderen verwerfen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Drop the preview</source>
        <translation>Vorschau &amp;verwerfen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the bowing as it is again</source>
        <translation>Die Strichfassung wieder zeigen, wie sie ist</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Next finding</source>
        <translation>Nächster &amp;Befund</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the next thing that the check found</source>
        <translation>Den nächsten Befund der Prüfung zeigen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Previous finding</source>
        <translation>&amp;Voriger Befund</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the thing found before this one</source>
        <translation>Den Befund davor zeigen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Mend the chosen finding</source>
        <translation>Gewählten Befund be&amp;heben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do the first that the chosen finding offers</source>
        <translation>Die erste Abhilfe des gewählten Befunds anwenden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell its rule as a no&amp;te</source>
        <translation>Regel nur als Hin&amp;weis melden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell what this rule finds as notes</source>
        <translation>Was diese Regel findet, nur als Hinweis melden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Do not tell its rule</source>
        <translation>Regel &amp;nicht melden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do not tell in this lesson what this rule finds</source>
        <translation>In dieser Lektion nicht melden, was diese Regel findet</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell &amp;all rules as they are</source>
        <translation>&amp;Alle Regeln wieder melden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell again what was turned down in this lesson</source>
        <translation>Wieder melden, was in dieser Lektion leiser gestellt war</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Bow and &amp;fiddle…</source>
        <translation>Bogen und &amp;Geige…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Set the length of the hair, bow speeds, tempo and strings that this lesson is checked by</source>
        <translation>Länge des Bezugs, Bogengeschwindigkeiten, Tempo und Saiten einstellen, mit denen diese Lektion geprüft wird</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Set of tunes…</source>
        <translation>&amp;Set von Stücken…</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put tunes together in a set and see how the bow goes on</source>
        <translation>Stücke zu einem Set zusammenstellen und sehen, wie der Bogen weitergeht</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/player_desk.py"/>
        <source>&amp;Play</source>
        <translation>Abs&amp;pielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the bar of the marked note on, or stop</source>
        <translation>Ab dem Takt der markierten Note spielen oder anhalten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the &amp;beginning</source>
        <translation>Von &amp;vorn abspielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the first bar that is to be played</source>
        <translation>Ab dem ersten zu spielenden Takt spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play these bars rou&amp;nd and round</source>
        <translation>Diese &amp;Takte immer wieder</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play the bars of the selection, or that of the marked note, round and round</source>
        <translation>Die Takte der Auswahl oder den der markierten Note immer wieder spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Round and round</source>
        <translation>&amp;Immer wieder</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Begin again at the end</source>
        <translation>Am Ende von vorn beginnen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Round</source>
        <translation>Immer wieder</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>All b&amp;ars</source>
        <translation>&amp;Alle Takte</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/player_bar.py"/>
        <source>Play the whole tune with its repeats</source>
        <translation>Das ganze Stück mit seinen Wiederholungen spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The set of &amp;tunes</source>
        <translation>Das &amp;Set</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play the set in the place of the open tune</source>
        <translation>Das Set anstelle des offenen Stücks spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Slower</source>
        <translation>&amp;Langsamer</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play slower by five percent of the tempo</source>
        <translation>Um fünf Prozent des Tempos langsamer spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Faster</source>
        <translation>Sch&amp;neller</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play faster by five percent of the tempo</source>
        <translation>Um fünf Prozent des Tempos schneller spielen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Practice &amp;ladder</source>
        <translation>Te&amp;mpoleiter</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play again and again, each time a little faster</source>
        <translation>Immer wieder spielen, jedes Mal ein wenig schneller</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Ladder</source>
        <translation>Tempoleiter</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Pla&amp;yer over the page</source>
        <translation>Spieler ü&amp;ber dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show what is played, how fast, and the bow</source>
        <translation>Zeigen, was gespielt wird, wie schnell, und den Bogen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>S&amp;helf</source>
        <translation>&amp;Regal</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Find a lesson or a tune of a book on your shelf</source>
        <translation>Eine Lektion oder ein Stück einer Sammlung im Regal finden</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the page larger</source>
        <translation>Das Blatt größer zeigen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the page smaller</source>
        <translation>Das Blatt kleiner zeigen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Fit the width</source>
        <translation>Fenster&amp;breite</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As wide as the window has room for</source>
        <translation>So breit, wie das Fenster Platz hat</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Every stroke</source>
        <translation>&amp;Jeder Strich</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A bow mark on every stroke</source>
        <translation>Ein Strichzeichen auf jedem Strich</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Where each &amp;bar begins</source>
        <translation>Am &amp;Taktanfang</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A bow mark on the first stroke of each bar</source>
        <translation>Ein Strichzeichen auf dem ersten Strich jedes Taktes</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Only where &amp;needed</source>
        <translation>Nur wo &amp;nötig</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Only the bow marks needed to read the rest</source>
        <translation>Nur die Strichzeichen, die zum Lesen der übrigen nötig sind</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accents under the staff</source>
        <translation>Betonungen &amp;unter der Notenzeile</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show how each accented place is met</source>
        <translation>Zeigen, wie jede betonte Stelle getroffen wird</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Bow from fro&amp;g to tip</source>
        <translation>Bogen von &amp;Frosch bis Spitze</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show where on the hair each stroke lies</source>
        <translation>Zeigen, wo auf dem Bezug jeder Strich liegt</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As the s&amp;ystem</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Light or dark as the system is</source>
        <translation>Hell oder dunkel wie das System</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Dark ink on light paper</source>
        <translation>Dunkle Tinte auf hellem Papier</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Light ink on dark paper</source>
        <translation>Helle Tinte auf dunklem Papier</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The language of the system, from the next start on</source>
        <translation>Die Sprache des Systems, ab dem nächsten Start</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;English</source>
        <translation>&amp;English</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>English, from the next start on</source>
        <translation>Englisch, ab dem nächsten Start</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Deutsch</source>
        <translation>&amp;Deutsch</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>German, from the next start on</source>
        <translation>Deutsch, ab dem nächsten Start</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Manual</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Read how everything is done, with pictures</source>
        <translation>Nachlesen, wie alles geht, mit Bildern</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Keys and gestures</source>
        <translation>&amp;Tasten und Gesten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>What mouse and keys do on the page</source>
        <translation>Was Maus und Tasten auf dem Blatt tun</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Tour of the window</source>
        <translation>&amp;Rundgang durch das Fenster</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Be led through the parts of the window</source>
        <translation>Sich durch die Teile des Fensters führen lassen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;What is this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Learn what anything in the window is: click it</source>
        <translation>Erfahren, was etwas im Fenster ist: anklicken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;About Bowbench</source>
        <translation>Ü&amp;ber Bowbench</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Version, and the licences of all that the program is made of</source>
        <translation>Version und Lizenzen von allem, woraus das Programm besteht</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Ornaments</source>
        <translation>&amp;Verzierungen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <location filename="../../app/set_window.py"/>
        <source>&amp;Bowing</source>
        <translation>&amp;Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Plan</source>
        <translation>&amp;Planen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Pla&amp;y</source>
        <translation>&amp;Wiedergabe</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Heard</source>
        <translation>Zu &amp;hören</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Check</source>
        <translation>P&amp;rüfung</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Bow marks</source>
        <translation>&amp;Strichzeichen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Colours</source>
        <translation>F&amp;arben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lang&amp;uage</source>
        <translation>Sprac&amp;he</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Compare &amp;with</source>
        <translation>Vergleichen &amp;mit</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>{where}: {tip}</source>
        <comment>tip of an action</comment>
        <translation>{where}: {tip}</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>{tip} ({key})</source>
        <translation>{tip} ({key})</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>work out the best bowing for an accent plan</source>
        <translation>die beste Strichfassung für einen Betonungsplan ausarbeiten</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>on-beat, backbeat, by-phrase, none, or places in quarter notes such as 0,2</source>
        <translation>on-beat, backbeat, by-phrase, none oder Stellen in Vierteln wie 0,2</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>slur in a style: one of your own, “1883 book”, or this-tune</source>
        <translation>in einem Stil binden: ein eigener, „1883 book“ oder this-tune</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>with --style, slur only what is sure</source>
        <translation>mit --style nur binden, was sicher ist</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>strokes of two and three notes, not the fewest slurs</source>
        <translation>Striche von zwei und drei Noten, nicht möglichst wenige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <location filename="../../app/sound_command.py"/>
        <source>the tune of this number in a book; the first if left out</source>
        <translation>das Stück dieser Nummer in einer Sammlung; ohne Angabe das erste</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>keep the slurs and marks of the first bowing</source>
        <translation>Bindebögen und Zeichen der ersten Strichfassung behalten</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>add up to K more that differ audibly</source>
        <translation>bis zu K weitere hinzufügen, die sich hörbar unterscheiden</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>the lesson with what was found</source>
        <translation>die Lektion mit dem Ergebnis</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/learn_command.py"/>
        <location filename="../../app/shelf_command.py"/>
        <source>print one JSON object</source>
        <translation>ein JSON-Objekt ausgeben</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <location filename="../../app/sound_command.py"/>
        <source>{file}: there is no tune number {number}</source>
        <translation>{file}: Es gibt kein Stück mit der Nummer {number}</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>Neither --accents nor --style was given: one of them says what bowing is worked out.</source>
        <translation>Weder --accents noch --style angegeben: Eines davon sagt, welche Strichfassung ausgearbeitet wird.</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>--smooth and --alternatives do not go with --style, which says what is slurred.</source>
        <translation>--smooth und --alternatives passen nicht zu --style, das sagt, was gebunden wird.</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>{accents}, smooth</source>
        <comment>name of a bowing</comment>
        <translation>{accents}, fließend</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>{accents}, fewest slurs</source>
        <comment>name of a bowing</comment>
        <translation>{accents}, wenige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>{numbers} (proven best)</source>
        <translation>{numbers} (nachweislich am besten)</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>{numbers} (best found; none can be better than {bound})</source>
        <translation>{numbers} (beste gefundene; keine kann besser sein als {bound})</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>missed {missed}, broken {broken}, cost {cost}</source>
        <translation>verfehlt {missed}, Brüche {broken}, Kosten {cost}</translation>
    </message>
    <message>
        <location filename="../../app/bow_command.py"/>
        <source>“{text}” is no number of alternatives: expected 1 to {most}</source>
        <translation>„{text}“ ist keine Zahl von Alternativen: erwartet wird 1 bis {most}</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Usual values: about 65 cm of hair on a full-size bow (instrument handbooks, from memory); bow speeds of 5 to 100 cm/s in ordinary playing (Askenfelt, Journal of the Acoustical Society of America 80, 1986, and 86, 1989, from memory); the one even speed of 30 cm/s lies between, and is ours. Tempos of dances: Breathnach, Ceol Rince na hÉireann 1 (1963), and dance clubs. Tunings: common practice, no source.</source>
        <translation>Übliche Werte: etwa 65 cm Bezug an einem ganzen Bogen (Instrumentenhandbücher, aus dem Gedächtnis); Bogengeschwindigkeiten von 5 bis 100 cm/s in gewöhnlichem Spiel (Askenfelt, Journal of the Acoustical Society of America 80, 1986, und 86, 1989, aus dem Gedächtnis); die gleichmäßige Geschwindigkeit von 30 cm/s liegt dazwischen und ist unsere. Tempi der Tänze: Breathnach, Ceol Rince na hÉireann 1 (1963), und Tanzvereine. Stimmungen: allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>As typed here</source>
        <translation>Wie hier eingegeben</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <location filename="../../app/main_window.py"/>
        <source>Bow and fiddle</source>
        <translation>Bogen und Geige</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Check at this &amp;tempo, whatever the tune says</source>
        <translation>In diesem &amp;Tempo prüfen, was immer das Stück sagt</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Note that is counted</source>
        <translation>Gezählte Note</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source> a minute</source>
        <translation> pro Minute</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Beats a minute</source>
        <translation>Schläge pro Minute</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Open strings from low to high</source>
        <translation>Leere Saiten von tief nach hoch</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>What has to be changed first</source>
        <translation>Was zuerst zu ändern ist</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Otherwise {pace}.</source>
        <translation>Sonst {pace}.</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Length of the &amp;hair</source>
        <translation>Länge des &amp;Bezugs</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>&amp;Even bow speed</source>
        <translation>&amp;Gleichmäßige Bogengeschwindigkeit</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>&amp;Slowest</source>
        <translation>&amp;Langsamste</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>&amp;Fastest</source>
        <translation>&amp;Schnellste</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>T&amp;uning</source>
        <translation>St&amp;immung</translation>
    </message>
    <message>
        <location filename="../../app/bow_fiddle_dialog.py"/>
        <source>&amp;Usual values</source>
        <translation>&amp;Übliche Werte</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace.py"/>
        <source>Bow from frog to tip</source>
        <translation>Bogen von Frosch bis Spitze</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace.py"/>
        <source>Click to go to the note; Ctrl and the arrow keys go to where the bow runs out.</source>
        <translation>Klicken führt zur Note; Strg und die Pfeiltasten führen dorthin, wo der Bogen zu Ende geht.</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace.py"/>
        <source>Where the bow runs out</source>
        <translation>Wo der Bogen zu Ende geht</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace.py"/>
        <source>The bow runs out nowhere behind this.</source>
        <translation>Danach geht der Bogen nirgends zu Ende.</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace.py"/>
        <source>The bow runs out nowhere before this.</source>
        <translation>Davor geht der Bogen nirgends zu Ende.</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace_painting.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>frog</source>
        <translation>Frosch</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace_painting.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <location filename="../../app/bow_trace_painting.py"/>
        <source>out</source>
        <translation>aus</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>{count} quarters</source>
        <translation>{count} Viertel</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>{beat} = {number}</source>
        <comment>tempo</comment>
        <translation>{beat} = {number}</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{tempo}, as set</source>
        <translation>{tempo}, wie eingestellt</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{tempo}, as the tune says</source>
        <translation>{tempo}, wie im Stück angegeben</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>{tempo}, usual for this dance</source>
        <translation>{tempo}, üblich für diesen Tanz</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <location filename="../../core/checks/reach.py"/>
        <source>{tempo}, assumed</source>
        <translation>{tempo}, angenommen</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{strings} ({name})</source>
        <comment>a tuning</comment>
        <translation>{strings} ({name})</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{metres} m</source>
        <translation>{metres} m</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>at {speed} cm/s</source>
        <translation>bei {speed} cm/s</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>The bow stays on {hair} cm of hair {speed} ({pace}).</source>
        <translation>Der Bogen bleibt {speed} auf {hair} cm Bezug ({pace}).</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>The bow runs out in {bars} {speed} ({pace}); within {slowest} to {fastest} cm/s it need not.</source>
        <translation>Der Bogen geht in {bars} {speed} zu Ende ({pace}); zwischen {slowest} und {fastest} cm/s muss er es nicht.</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>The bow runs out in {bars} {speed} ({pace}), as at any speeds of {slowest} to {fastest} cm/s.</source>
        <translation>Der Bogen geht in {bars} {speed} zu Ende ({pace}), wie bei allen Geschwindigkeiten von {slowest} bis {fastest} cm/s.</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>The bow runs out in {bars} {speed} ({pace}); in {hopeless} at any speeds of {slowest} to {fastest} cm/s.</source>
        <translation>Der Bogen geht in {bars} {speed} zu Ende ({pace}); in {hopeless} bei allen Geschwindigkeiten von {slowest} bis {fastest} cm/s.</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>from {begin} to {end} of {hair} cm from the frog</source>
        <translation>von {begin} bis {end} von {hair} cm, vom Frosch aus</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>begins {begin} cm from the frog and needs {needed} cm at one even speed</source>
        <translation>beginnt {begin} cm vom Frosch und braucht bei gleichmäßiger Geschwindigkeit {needed} cm</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{bow} from {note}{passes}: {seconds} s, {hair}</source>
        <translation>{bow} ab {note}{passes}: {seconds} s, {hair}</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{stroke}; the bow runs out at the {end} at any speed</source>
        <translation>{stroke}; der Bogen geht bei jeder Geschwindigkeit zu Ende ({end})</translation>
    </message>
    <message>
        <location filename="../../app/bow_words.py"/>
        <source>{stroke}; the bow runs out at the {end}</source>
        <translation>{stroke}; der Bogen geht zu Ende ({end})</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <location filename="../../core/drills.py"/>
        <location filename="../../core/planner/versions.py"/>
        <source>Separate bows</source>
        <translation>Einzelstriche</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Choose the bowing on the page; tick others to compare them with it; double-click to rename, drag to reorder</source>
        <translation>Die Strichfassung auf dem Blatt auswählen; andere zum Vergleichen ankreuzen; zum Umbenennen doppelklicken, zum Umordnen ziehen</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>{name}, on the page, compared</source>
        <translation>{name}, auf dem Blatt, im Vergleich</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>{name}, on the page</source>
        <translation>{name}, auf dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>{name}, compared</source>
        <translation>{name}, im Vergleich</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Bowings of this lesson</source>
        <translation>Strichfassungen dieser Lektion</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Bowings</source>
        <comment>heading beside narrow buttons</comment>
        <translation>Striche</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Add</source>
        <comment>narrow button</comment>
        <translation>Neu</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Copy</source>
        <comment>narrow button</comment>
        <translation>Kopie</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Copy the bowing on the page</source>
        <translation>Die Strichfassung auf dem Blatt kopieren</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Delete</source>
        <comment>narrow button</comment>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Delete the bowing on the page</source>
        <translation>Die Strichfassung auf dem Blatt löschen</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Add a bowing</source>
        <translation>Strichfassung hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>{name} copy</source>
        <translation>{name} (Kopie)</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Copy “{name}”</source>
        <translation>„{name}“ kopieren</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Delete “{name}”</source>
        <translation>„{name}“ löschen</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Rename “{name}”</source>
        <translation>„{name}“ umbenennen</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <source>Move “{name}”</source>
        <translation>„{name}“ verschieben</translation>
    </message>
    <message>
        <location filename="../../app/bowings_pane.py"/>
        <location filename="../../app/page_view.py"/>
        <location filename="../../app/plan_taking.py"/>
        <location filename="../../app/set_window.py"/>
        <location filename="../../app/side_list.py"/>
        <source>Done: {edit}.</source>
        <translation>Erledigt: {edit}.</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>usage: </source>
        <comment>of the command line</comment>
        <translation>Aufruf: </translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>positional arguments</source>
        <comment>of the command line</comment>
        <translation>Argumente</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>options</source>
        <comment>of the command line</comment>
        <translation>Optionen</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>show this help message and exit</source>
        <comment>of the command line</comment>
        <translation>diese Hilfe zeigen</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>%(prog)s: error: %(message)s
</source>
        <comment>of the command line</comment>
        <translation>%(prog)s: Fehler: %(message)s
</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>argument %(argument_name)s: %(message)s</source>
        <comment>of the command line</comment>
        <translation>%(argument_name)s: %(message)s</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>the following arguments are required: %s</source>
        <comment>of the command line</comment>
        <translation>Es fehlt: %s</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>unrecognized arguments: %s</source>
        <comment>of the command line</comment>
        <translation>Nicht bekannt: %s</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>expected one argument</source>
        <comment>of the command line</comment>
        <translation>Erwartet wird ein Wert</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>expected at least one argument</source>
        <comment>of the command line</comment>
        <translation>Erwartet wird mindestens ein Wert</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>ignored explicit argument %r</source>
        <comment>of the command line</comment>
        <translation>Hier gehört kein Wert hin: %r</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>ambiguous option: %(option)s could match %(matches)s</source>
        <comment>of the command line</comment>
        <translation>%(option)s ist nicht eindeutig: möglich sind %(matches)s</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>invalid choice: %(value)r (choose from %(choices)s)</source>
        <comment>of the command line</comment>
        <translation>%(value)r gibt es nicht; zur Wahl stehen %(choices)s</translation>
    </message>
    <message>
        <location filename="../../app/call_words.py"/>
        <source>invalid %(type)s value: %(value)r</source>
        <comment>of the command line</comment>
        <translation>%(value)r ist keine Angabe der Art %(type)s</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>Only what is sure: {slurs}</source>
        <translation>Nur was sicher ist: {slurs}</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>Most likely: {slurs}</source>
        <translation>Am wahrscheinlichsten: {slurs}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/carrying.py"/>
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../app/shelf_command.py"/>
        <location filename="../../app/totals_view.py"/>
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} slurs</source>
        <extracomment>one: 1 slur</extracomment>
        <translation>
            <numerusform>1 Bindebogen</numerusform>
            <numerusform>{n} Bindebögen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <location filename="../../app/plan_words.py"/>
        <source>no slurs</source>
        <translation>keine Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>Most of it is a guess: mark more bars first, or choose another style.</source>
        <translation>Das meiste ist geraten: zuerst mehr Takte bezeichnen oder einen anderen Stil wählen.</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>{bars} are equal but slurred differently, so what is like them is less sure</source>
        <translation>{bars} sind gleich, aber verschieden gebunden, daher ist Ähnliches weniger sicher</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>From the style alone: {slurs}; {met}.</source>
        <translation>Allein aus dem Stil: {slurs}; {met}.</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>accents not sought, as in these bars</source>
        <translation>Betonungen nicht gesucht, wie in diesen Takten</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>From {bars}: {slurs}; {met}.</source>
        <translation>Aus {bars}: {slurs}; {met}.</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>Carried on from its own bars</source>
        <comment>name of a bowing</comment>
        <translation>Aus eigenen Takten fortgeführt</translation>
    </message>
    <message>
        <location filename="../../app/carrying.py"/>
        <source>In the style “{style}”</source>
        <comment>name of a bowing</comment>
        <translation>Im Stil „{style}“</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>tell what a player would trip over in each bowing</source>
        <translation>sagen, worüber man in jeder Strichfassung stolpern würde</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>check the tunes as a set in this order too; each FILE is then {form}</source>
        <translation>die Stücke auch als Set in dieser Reihenfolge prüfen; jede FILE ist dann {form}</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>check this bowing only</source>
        <translation>nur diese Strichfassung prüfen</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>judge every bowing by this accent plan</source>
        <translation>jede Strichfassung nach diesem Betonungsplan beurteilen</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>judge at this tempo, in beats of the dance (a reel&apos;s: half notes)</source>
        <translation>in diesem Tempo beurteilen, in Schlägen des Tanzes (beim Reel: Halbe)</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>judge on a fiddle tuned so, low to high: &quot;A3 E4 A4 E5&quot;</source>
        <translation>auf einer so gestimmten Geige beurteilen, von tief nach hoch: &quot;A3 E4 A4 E5&quot;</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>No file has a bowing named “{name}”.</source>
        <translation>Keine Datei hat eine Strichfassung namens „{name}“.</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/pack_run.py"/>
        <location filename="../../app/set_report.py"/>
        <location filename="../../app/tune_choice.py"/>
        <source>untitled</source>
        <translation>ohne Titel</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>{file}: {title} — {bowing} (accents {plan})</source>
        <translation>{file}: {title} – {bowing} (Betonungen {plan})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/totals_view.py"/>
        <source>{n} strokes</source>
        <extracomment>one: 1 stroke</extracomment>
        <translation>
            <numerusform>1 Strich</numerusform>
            <numerusform>{n} Striche</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../app/set_report.py"/>
        <location filename="../../app/totals_view.py"/>
        <location filename="../../core/checks/retakes.py"/>
        <source>{n} retakes</source>
        <extracomment>one: 1 retake</extracomment>
        <translation>
            <numerusform>1 Neuansatz</numerusform>
            <numerusform>{n} Neuansätze</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>accents {driven} driven, {up} up, {buried} buried, {unstruck} unstruck</source>
        <translation>Betonungen: {driven} getrieben, {up} im Aufstrich, {buried} verdeckt, {unstruck} nicht angestrichen</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>comes round</source>
        <translation>geht rund auf</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>does not come round</source>
        <translation>geht nicht rund auf</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <source>consistency {share}; {rounds}</source>
        <translation>einheitlich zu {share}; {rounds}</translation>
    </message>
    <message>
        <location filename="../../app/check_command.py"/>
        <location filename="../../app/set_report.py"/>
        <location filename="../../app/set_rows.py"/>
        <location filename="../../app/sheet_content.py"/>
        <source>{severity}: {sentence}</source>
        <translation>{severity}: {sentence}</translation>
    </message>
    <message>
        <location filename="../../app/cli.py"/>
        <source>Work out, check and print the bowings of a fiddle tune.</source>
        <translation>Strichfassungen eines Geigenstücks ausarbeiten, prüfen und drucken.</translation>
    </message>
    <message>
        <location filename="../../app/cli.py"/>
        <source>Commands: {commands}; --help after each tells more.</source>
        <translation>Befehle: {commands}; --help nach jedem sagt mehr.</translation>
    </message>
    <message>
        <location filename="../../app/cli.py"/>
        <source>lesson (.musicxml, .mxl) or tune book (.abc) to open</source>
        <translation>zu öffnende Lektion (.musicxml, .mxl) oder Sammlung (.abc)</translation>
    </message>
    <message>
        <location filename="../../app/cli.py"/>
        <source>tell the versions of the program and its parts</source>
        <translation>die Versionen des Programms und seiner Teile nennen</translation>
    </message>
    <message>
        <location filename="../../app/cli.py"/>
        <source>“{text}” is no tempo: expected {least} to {most} beats a minute</source>
        <translation>„{text}“ ist kein Tempo: erwartet werden {least} bis {most} Schläge pro Minute</translation>
    </message>
    <message>
        <location filename="../../app/comparison_painting.py"/>
        <source>the others are told from this one</source>
        <translation>davon werden die anderen unterschieden</translation>
    </message>
    <message>
        <location filename="../../app/comparison_painting.py"/>
        <source>Beside “{name}”:</source>
        <translation>Neben „{name}“:</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Strokes</source>
        <translation>Striche</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <location filename="../../app/plan_suits.py"/>
        <source>Slurs</source>
        <translation>Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <location filename="../../app/plan_suits.py"/>
        <source>Retakes</source>
        <translation>Neuansätze</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Driven</source>
        <translation>Getrieben</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>On up-bow</source>
        <translation>Im Aufstrich</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Buried</source>
        <translation>Verdeckt</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Unstruck</source>
        <translation>Ohne Anstrich</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Consistent, %</source>
        <translation>Einheitlich, %</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Comes round</source>
        <translation>Geht rund auf</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <location filename="../../app/totals_view.py"/>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <location filename="../../app/totals_view.py"/>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Longest, s</source>
        <translation>Längster, s</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>{name}, worked on, the others are told from it</source>
        <translation>{name}, wird bearbeitet, davon werden die anderen unterschieden</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>{name}, worked on</source>
        <translation>{name}, wird bearbeitet</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>{name}, the others are told from it</source>
        <translation>{name}, davon werden die anderen unterschieden</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Totals of the bowings that are compared</source>
        <translation>Zahlen der verglichenen Strichfassungen</translation>
    </message>
    <message>
        <location filename="../../app/comparison_table.py"/>
        <source>Click a name to work on that bowing: bold is the one worked on, slanted the one told from</source>
        <translation>Einen Namen anklicken, um diese Strichfassung zu bearbeiten: fett die bearbeitete, schräg die, von der unterschieden wird</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <source>put the program into the menus of your desktop, or take it out</source>
        <translation>das Programm in die Menüs der Arbeitsumgebung aufnehmen oder daraus entfernen</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <source>entry, icon and kinds of file, for you alone</source>
        <translation>Eintrag, Symbol und Dateiarten, nur für dieses Benutzerkonto</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <source>Desktop entries are for Linux; README.md says how it is done on Windows and macOS.</source>
        <translation>Menüeinträge gibt es für Linux; README.md sagt, wie es unter Windows und macOS geht.</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <source>There is no command “bowbench” that the menu could start: install the program first.</source>
        <translation>Es gibt keinen Befehl „bowbench“, den das Menü starten könnte: zuerst das Programm installieren.</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <location filename="../../app/pack_command.py"/>
        <location filename="../../app/sheet_command.py"/>
        <location filename="../../app/sound_command.py"/>
        <source>{path} cannot be written: {reason}.</source>
        <translation>{path} lässt sich nicht schreiben: {reason}.</translation>
    </message>
    <message>
        <location filename="../../app/desktop_command.py"/>
        <source>There was no entry.</source>
        <translation>Es gab keinen Eintrag.</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Export as PDF</source>
        <translation>Als PDF exportieren</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Export as ABC</source>
        <translation>Als ABC exportieren</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Tune book in ABC (*.abc)</source>
        <translation>Sammlung in ABC (*.abc)</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Add a folder to the shelf</source>
        <translation>Ordner ins Regal stellen</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Add to the pack</source>
        <translation>Zum Paket hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Add a folder to the pack</source>
        <translation>Ordner zum Paket hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Make the pack in</source>
        <translation>Paket herstellen in</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Save the lesson as</source>
        <translation>Lektion speichern unter</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Save the changes to “{title}”?</source>
        <translation>Änderungen an „{title}“ speichern?</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>They are lost if you do not save them.</source>
        <translation>Ungespeichert gehen sie verloren.</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>If it is overwritten, what it holds now is kept beside it.</source>
        <translation>Beim Überschreiben bleibt der jetzige Inhalt daneben erhalten.</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Save &amp;as another name…</source>
        <translation>Unter &amp;anderem Namen speichern…</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>&amp;Overwrite</source>
        <translation>Über&amp;schreiben</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>The lesson is open as it was. Nothing on the disk has been changed.</source>
        <translation>Die Lektion ist offen wie zuvor. Auf dem Datenträger wurde nichts geändert.</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <source>Save &amp;elsewhere…</source>
        <translation>&amp;Woanders speichern…</translation>
    </message>
    <message>
        <location filename="../../app/dialogs.py"/>
        <location filename="../../app/learn_dialog.py"/>
        <location filename="../../app/shelf_pane.py"/>
        <source>Leave off</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>slurred</source>
        <comment>legend</comment>
        <translation>gebunden</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>not slurred</source>
        <comment>legend</comment>
        <translation>nicht gebunden</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>slurred or hooked</source>
        <comment>legend</comment>
        <translation>gebunden oder angehängt</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>a sign more</source>
        <comment>legend</comment>
        <translation>ein Zeichen mehr</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>a sign less</source>
        <comment>legend</comment>
        <translation>ein Zeichen weniger</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>another sign</source>
        <comment>legend</comment>
        <translation>anderes Zeichen</translation>
    </message>
    <message>
        <location filename="../../app/difference_painting.py"/>
        <source>the bow goes the other way</source>
        <comment>legend</comment>
        <translation>Bogen geht andersherum</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>on a bow of its own</source>
        <translation>auf eigenem Strich</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../app/note_words.py"/>
        <source>slurred to the note before</source>
        <translation>an die Note davor gebunden</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../app/note_words.py"/>
        <source>hooked to the note before</source>
        <translation>an die Note davor angehängt</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>accent</source>
        <comment>articulation</comment>
        <translation>Akzent</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>strong accent</source>
        <comment>articulation</comment>
        <translation>starker Akzent</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>staccato</source>
        <comment>articulation</comment>
        <translation>Staccato</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>tenuto</source>
        <comment>articulation</comment>
        <translation>Tenuto</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>detached legato</source>
        <comment>articulation</comment>
        <translation>Portato</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>staccatissimo</source>
        <comment>articulation</comment>
        <translation>Staccatissimo</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>spiccato</source>
        <comment>articulation</comment>
        <translation>Spiccato</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>stress</source>
        <comment>articulation</comment>
        <translation>schwer</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>unstress</source>
        <comment>articulation</comment>
        <translation>leicht</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>breath mark</source>
        <comment>articulation</comment>
        <translation>Atemzeichen</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>fermata</source>
        <comment>articulation</comment>
        <translation>Fermate</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>open string</source>
        <comment>articulation</comment>
        <translation>leere Saite</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>harmonic</source>
        <comment>articulation</comment>
        <translation>Flageolett</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>snap pizzicato</source>
        <comment>articulation</comment>
        <translation>Bartók-Pizzicato</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>without a sign</source>
        <translation>ohne Zeichen</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>{place}: {here}; in “{other}” {there}.</source>
        <translation>{place}: {here}; in „{other}“ {there}.</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>nothing differs from “{other}”.</source>
        <translation>kein Unterschied zu „{other}“.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/difference_words.py"/>
        <source>{n} in slur</source>
        <extracomment>one: 1 in slur</extracomment>
        <translation>
            <numerusform>1 im Bindebogen</numerusform>
            <numerusform>{n} im Bindebogen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/difference_words.py"/>
        <source>{n} in direction</source>
        <extracomment>one: 1 in direction</extracomment>
        <translation>
            <numerusform>1 in der Richtung</numerusform>
            <numerusform>{n} in der Richtung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/difference_words.py"/>
        <source>{n} in sign</source>
        <extracomment>one: 1 in sign</extracomment>
        <translation>
            <numerusform>1 im Zeichen</numerusform>
            <numerusform>{n} im Zeichen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/difference_words.py"/>
        <source>{n} notes differ from “{other}”: {what}.</source>
        <extracomment>one: 1 note differs from “{other}”: {what}.</extracomment>
        <translation>
            <numerusform>1 Note weicht von „{other}“ ab: {what}.</numerusform>
            <numerusform>{n} Noten weichen von „{other}“ ab: {what}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/difference_words.py"/>
        <source>{n} grace notes</source>
        <extracomment>one: 1 grace note</extracomment>
        <translation>
            <numerusform>1 Vorschlagsnote</numerusform>
            <numerusform>{n} Vorschlagsnoten</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>finger {finger}</source>
        <translation>Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../core/translation.py"/>
        <source>{row} and {word}</source>
        <comment>the end of a row</comment>
        <translation>{row} und {word}</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <source>with {signs}</source>
        <translation>mit {signs}</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../app/note_words.py"/>
        <source>never played</source>
        <translation>nie gespielt</translation>
    </message>
    <message>
        <location filename="../../app/difference_words.py"/>
        <location filename="../../app/note_words.py"/>
        <source>{bow} on pass {number}</source>
        <translation>{bow} in Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/exporting.py"/>
        <source>{name} is written; ABC has no place for all that the lesson holds.</source>
        <translation>{name} ist geschrieben; ABC hat nicht für alles in der Lektion Platz.</translation>
    </message>
    <message>
        <location filename="../../app/exporting.py"/>
        <source>Written to {name}.</source>
        <translation>In {name} geschrieben.</translation>
    </message>
    <message>
        <location filename="../../app/exporting.py"/>
        <source>Set up the sheet</source>
        <translation>Blatt einrichten</translation>
    </message>
    <message>
        <location filename="../../app/exporting.py"/>
        <source>The sheet cannot be printed: {reason}</source>
        <translation>Das Blatt lässt sich nicht drucken: {reason}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/exporting.py"/>
        <source>Wrote {name}, {n} pages.</source>
        <extracomment>one: Wrote {name}, 1 page.</extracomment>
        <translation>
            <numerusform>{name} geschrieben, 1 Seite.</numerusform>
            <numerusform>{name} geschrieben, {n} Seiten.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>{name} is no longer where it was.</source>
        <translation>{name} ist nicht mehr da, wo es war.</translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>&amp;Save it again</source>
        <translation>Wieder &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>{name} has been changed by another window or program. Saving will ask which of the two to keep.</source>
        <translation>{name} wurde von einem anderen Fenster oder Programm geändert. Beim Speichern wird gefragt, welche Fassung bleibt.</translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>{name} has been changed by another window or program.</source>
        <translation>{name} wurde von einem anderen Fenster oder Programm geändert.</translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>&amp;Read it again</source>
        <translation>Neu &amp;lesen</translation>
    </message>
    <message>
        <location filename="../../app/file_news.py"/>
        <source>{name} is open in another window too: whoever saves second is asked which of the two to keep.</source>
        <translation>{name} ist auch in einem anderen Fenster offen: Wer als Zweites speichert, wird gefragt, welche Fassung bleibt.</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>Lessons, scores and tune books (*.musicxml *.mxl *.xml *.abc *.txt)</source>
        <translation>Lektionen, Partituren und Sammlungen (*.musicxml *.mxl *.xml *.abc *.txt)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>Lessons and scores in MusicXML (*.musicxml *.mxl *.xml)</source>
        <translation>Lektionen und Partituren in MusicXML (*.musicxml *.mxl *.xml)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>Tune books in ABC (*.abc *.txt)</source>
        <translation>Sammlungen in ABC (*.abc *.txt)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>Lesson in MusicXML (*.musicxml)</source>
        <translation>Lektion in MusicXML (*.musicxml)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>Packed lesson (*.mxl)</source>
        <translation>Gepackte Lektion (*.mxl)</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>{name} cannot be opened: {why}.</source>
        <translation>{name} lässt sich nicht öffnen: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>{name} is larger than {size} MB and was not opened.</source>
        <translation>{name} ist größer als {size} MB und wurde nicht geöffnet.</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>{name} cannot be saved: {why}.</source>
        <translation>{name} lässt sich nicht speichern: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>{name} has been changed since this lesson was read from it.</source>
        <translation>{name} wurde geändert, seit diese Lektion daraus gelesen wurde.</translation>
    </message>
    <message>
        <location filename="../../app/files.py"/>
        <source>{name} cannot be written: {why}.</source>
        <translation>{name} lässt sich nicht schreiben: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/findings_model.py"/>
        <location filename="../../app/join_panel.py"/>
        <source>{title}. {why}</source>
        <comment>of a rule</comment>
        <translation>{title}. {why}</translation>
    </message>
    <message>
        <location filename="../../app/findings_model.py"/>
        <source>{severity}, {where}</source>
        <translation>{severity}, {where}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/findings_model.py"/>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../core/checks/words.py"/>
        <source>bars {numbers}</source>
        <extracomment>one: bar {numbers}</extracomment>
        <translation>
            <numerusform>Takt {numbers}</numerusform>
            <numerusform>Takt {numbers}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/findings_model.py"/>
        <source>pass {number}</source>
        <translation>Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/gestures.py"/>
        <source>Drag over notes for a longer slur; Ctrl+click hooks.</source>
        <translation>Über Noten ziehen für einen längeren Bindebogen; Strg+Klick hängt an.</translation>
    </message>
    <message>
        <location filename="../../app/gestures.py"/>
        <source>Shift+click frees, Ctrl+click retakes.</source>
        <translation>Umschalt+Klick löst, Strg+Klick setzt neu an.</translation>
    </message>
    <message>
        <location filename="../../app/gestures.py"/>
        <source>Right button: accents of more bars.</source>
        <translation>Rechte Taste: Betonungen weiterer Takte.</translation>
    </message>
    <message>
        <location filename="../../app/help_texts.py"/>
        <source>Keys and gestures</source>
        <translation>Tasten und Gesten</translation>
    </message>
    <message>
        <location filename="../../app/help_texts.py"/>
        <source>&lt;p&gt;&lt;b&gt;Mouse.&lt;/b&gt; Click a note to slur it to the next, or to separate the two. {note_tips} Shift+click selects up to a note. Click a bow mark to turn the stroke round. {sign_tips} The right button opens the menu of a note. Ctrl and the wheel zoom.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Accents under the staff.&lt;/b&gt; A full wedge is driven by a down-bow, an open wedge lies on an up-bow, a dot under an arch is buried inside a slur, a ring is not struck; two shapes stand for two passes. Click under a note to accent that place in its bar, or to stop doing so.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Bowings under one another.&lt;/b&gt; An arch under a line: slurred here; a cut arch: slurred in the bowing told from; a dotted arch: slurred in one, hooked in the other. A full square: a sign more; an empty one: a sign less; half full: another sign. A line with ticks: the bow goes the other way. Click a line to work on its bowing; Up and Down go from bowing to bowing.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Keys on the page.&lt;/b&gt; Arrow keys, Home and End move the focus note; with Shift they select.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Maus.&lt;/b&gt; Eine Note anklicken, um sie an die nächste zu binden oder beide zu trennen. {note_tips} Umschalt+Klick wählt bis zu einer Note aus. Ein Strichzeichen anklicken, um den Strich umzudrehen. {sign_tips} Die rechte Taste öffnet das Menü einer Note. Strg und das Mausrad ändern die Größe.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Betonungen unter der Notenzeile.&lt;/b&gt; Ein voller Keil ist durch einen Abstrich getrieben, ein offener liegt auf einem Aufstrich, ein Punkt unter einem Bogen ist unter einem Bindebogen verdeckt, ein Ring ist nicht angestrichen; zwei Formen stehen für zwei Durchgänge. Unter eine Note klicken, um diese Stelle ihres Taktes zu betonen oder nicht mehr zu betonen.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Strichfassungen untereinander.&lt;/b&gt; Ein Bogen unter einer Zeile: hier gebunden; ein durchgestrichener Bogen: gebunden in der Strichfassung, mit der verglichen wird; ein gepunkteter Bogen: in der einen gebunden, in der anderen angehängt. Ein volles Quadrat: ein Zeichen mehr; ein leeres: ein Zeichen weniger; halb voll: ein anderes Zeichen. Eine Linie mit kleinen Querstrichen: Der Bogen geht andersherum. Eine Zeile anklicken, um ihre Strichfassung zu bearbeiten; Pfeil auf und Pfeil ab gehen von Fassung zu Fassung.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Tasten auf dem Blatt.&lt;/b&gt; Pfeiltasten, Pos1 und Ende bewegen die markierte Note; mit Umschalt wählen sie aus.&lt;/p&gt;</translation>
    </message>
    <message>
        <location filename="../../app/hold.py"/>
        <source>another window is busy with it</source>
        <translation>ein anderes Fenster arbeitet damit</translation>
    </message>
    <message>
        <location filename="../../app/join_panel.py"/>
        <source>The bow goes on by itself here, and the tune is bowed as it is alone.</source>
        <translation>Der Bogen geht hier von selbst weiter, und das Stück wird gestrichen wie allein.</translation>
    </message>
    <message>
        <location filename="../../app/join_panel.py"/>
        <source>No single change at the end of the one tune or the start of the other mends this without doing harm.</source>
        <translation>Keine einzelne Änderung am Ende des einen oder am Anfang des anderen Stücks behebt das, ohne zu schaden.</translation>
    </message>
    <message>
        <location filename="../../app/join_panel.py"/>
        <source>In {name}, which is not on the page: {text}. Open it and add the change there.</source>
        <translation>In {name}, das nicht auf dem Blatt ist: {text}. Dort öffnen und ändern.</translation>
    </message>
    <message>
        <location filename="../../app/join_panel.py"/>
        <location filename="../../app/side_list.py"/>
        <source>Why this is found</source>
        <translation>Warum das gefunden wird</translation>
    </message>
    <message>
        <location filename="../../app/join_panel.py"/>
        <source>What to change in tunes that are not on the page</source>
        <translation>Was in Stücken zu ändern ist, die nicht auf dem Blatt sind</translation>
    </message>
    <message>
        <location filename="../../app/learn_command.py"/>
        <source>learn a style from the bowings of the lessons that are found</source>
        <translation>aus den Strichfassungen der gefundenen Lektionen einen Stil lernen</translation>
    </message>
    <message>
        <location filename="../../app/learn_command.py"/>
        <source>of the style; an own one of this name is replaced</source>
        <translation>des Stils; ein eigener dieses Namens wird ersetzt</translation>
    </message>
    <message>
        <location filename="../../app/learn_command.py"/>
        <location filename="../../app/shelf_command.py"/>
        <source>another catalogue than your own</source>
        <translation>ein anderer Katalog als der eigene</translation>
    </message>
    <message>
        <location filename="../../app/learn_command.py"/>
        <source>list the styles, and what was found in their lessons</source>
        <translation>die Stile aufführen und was in ihren Lektionen gefunden wurde</translation>
    </message>
    <message>
        <location filename="../../app/learn_command.py"/>
        <source>take an own style away</source>
        <translation>einen eigenen Stil entfernen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/learn_command.py"/>
        <location filename="../../app/style_learning.py"/>
        <source>{n} tunes have no slurs and were passed over.</source>
        <extracomment>one: 1 tune has no slurs and was passed over.</extracomment>
        <translation>
            <numerusform>1 Stück hat keine Bindebögen und wurde übergangen.</numerusform>
            <numerusform>{n} Stücke haben keine Bindebögen und wurden übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>Learn a style</source>
        <translation>Einen Stil lernen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/learn_dialog.py"/>
        <source>How notes are slurred is learned from the bowings of the {n} tunes that are found on the shelf.</source>
        <extracomment>one: How notes are slurred is learned from the bowing of the tune that is found on the shelf.</extracomment>
        <translation>
            <numerusform>Wie Noten gebunden werden, wird aus den Strichfassungen des im Regal gefundenen Stücks gelernt.</numerusform>
            <numerusform>Wie Noten gebunden werden, wird aus den Strichfassungen der {n} im Regal gefundenen Stücke gelernt.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>The lessons are read and not changed; what is learned stays on this computer.</source>
        <translation>Die Lektionen werden gelesen und nicht geändert; was gelernt wird, bleibt auf diesem Rechner.</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>My own style</source>
        <translation>Mein eigener Stil</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>Name of the style</source>
        <translation>Name des Stils</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>What comes of it</source>
        <translation>Was daraus wird</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>How far learning is</source>
        <translation>Wie weit das Lernen ist</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>&amp;Learn</source>
        <translation>&amp;Lernen</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <location filename="../../app/plan_controls.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>It could not be learned.</source>
        <translation>Das Lernen gelang nicht.</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>Left off; nothing was kept.</source>
        <translation>Abgebrochen; nichts wurde behalten.</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <source>There is a style of this name: learning replaces it.</source>
        <translation>Es gibt einen Stil dieses Namens: Das Lernen ersetzt ihn.</translation>
    </message>
    <message>
        <location filename="../../app/learn_dialog.py"/>
        <location filename="../../app/manual_window.py"/>
        <location filename="../../app/set_window.py"/>
        <location filename="../../app/style_dialog.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>the window, printing, sound output</source>
        <translation>das Fenster, Drucken, Klangausgabe</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>the window, printing</source>
        <translation>das Fenster, Drucken</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>sound output</source>
        <translation>Klangausgabe</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>Qt for Python</source>
        <translation>Qt für Python</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>engraving of the page</source>
        <translation>Notenstich des Blatts</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>a second reader of music, in the tests</source>
        <translation>ein zweiter Leser von Noten, in den Tests</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>samples of the sound</source>
        <translation>Abtastwerte des Klangs</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>values that never change</source>
        <translation>unveränderliche Werte</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>reading and writing MusicXML</source>
        <translation>MusicXML lesen und schreiben</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>learning how somebody slurs</source>
        <translation>lernen, wie jemand bindet</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>outline of printed sheets</source>
        <translation>Gliederung gedruckter Blätter</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>sound files</source>
        <translation>Klangdateien</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>MIDI files</source>
        <translation>MIDI-Dateien</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>the voice of the player; from the sound font Fluid R3</source>
        <translation>die Stimme des Spielers; aus der Klangbank Fluid R3</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>the window, printing, sound output; inside PySide6</source>
        <translation>das Fenster, Drucken, Klangausgabe; in PySide6</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>loaded by Qt for sound; inside PySide6_Addons</source>
        <translation>von Qt für Klang geladen; in PySide6_Addons</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>music signs, after the SMuFL standard; inside verovio</source>
        <translation>Notenzeichen nach dem SMuFL-Standard; in verovio</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>texts on the page and in print; inside verovio</source>
        <translation>Texte auf dem Blatt und im Druck; in verovio</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>sound files, with the libraries named in its notes; inside soundfile</source>
        <translation>Klangdateien, mit den in seinen Hinweisen genannten Bibliotheken; in soundfile</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>this program, its icons and its sample tunes (those are CC0)</source>
        <translation>dieses Programm, seine Symbole und Beispielstücke (diese sind CC0)</translation>
    </message>
    <message>
        <location filename="../../app/licences.py"/>
        <source>the language</source>
        <translation>die Sprache</translation>
    </message>
    <message>
        <location filename="../../app/looks.py"/>
        <source>The language changes when the program is started again.</source>
        <translation>Die Sprache wechselt, wenn das Programm neu gestartet wird.</translation>
    </message>
    <message>
        <location filename="../../app/looks.py"/>
        <source>Fits the width, {zoom}</source>
        <translation>Fensterbreite, {zoom}</translation>
    </message>
    <message>
        <location filename="../../app/main_window.py"/>
        <location filename="../../app/side_list.py"/>
        <source>Bow check</source>
        <translation>Strichprüfung</translation>
    </message>
    <message>
        <location filename="../../app/main_window.py"/>
        <source>{title}[*] – Bowbench</source>
        <translation>{title}[*] – Bowbench</translation>
    </message>
    <message>
        <location filename="../../app/main_window.py"/>
        <location filename="../../app/pack_dialog.py"/>
        <location filename="../../app/page_heading.py"/>
        <location filename="../../app/player_bar.py"/>
        <location filename="../../app/recovery_dialog.py"/>
        <location filename="../../app/recovery_offer.py"/>
        <location filename="../../app/saving.py"/>
        <location filename="../../app/set_rows.py"/>
        <location filename="../../app/sheet_content.py"/>
        <location filename="../../app/shelf_command.py"/>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <location filename="../../core/pack/contents.py"/>
        <location filename="../../core/sound/tags.py"/>
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>A first bowing</source>
        <translation>Eine erste Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>What the bow check says</source>
        <translation>Was die Strichprüfung sagt</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <location filename="../../app/plan_suits.py"/>
        <source>Accents</source>
        <translation>Betonungen</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Have it worked out</source>
        <translation>Ausarbeiten lassen</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Carry on in a style</source>
        <translation>In einem Stil fortführen</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Compare bowings</source>
        <translation>Strichfassungen vergleichen</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Hear it</source>
        <translation>Anhören</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Print it</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Lesson packs</source>
        <translation>Lektionspakete</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>The shelf</source>
        <translation>Das Regal</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>Sets of tunes</source>
        <translation>Sets von Stücken</translation>
    </message>
    <message>
        <location filename="../../app/manual.py"/>
        <source>All keys</source>
        <translation>Alle Tasten</translation>
    </message>
    <message>
        <location filename="../../app/manual_window.py"/>
        <source>Manual – Bowbench</source>
        <translation>Handbuch – Bowbench</translation>
    </message>
    <message>
        <location filename="../../app/manual_window.py"/>
        <location filename="../../app/pack_dialog.py"/>
        <location filename="../../app/tour_balloon.py"/>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../app/manual_window.py"/>
        <source>Show in the &amp;browser</source>
        <translation>Im &amp;Browser zeigen</translation>
    </message>
    <message>
        <location filename="../../app/manual_window.py"/>
        <source>Pages of the manual</source>
        <translation>Seiten des Handbuchs</translation>
    </message>
    <message>
        <location filename="../../app/manual_window.py"/>
        <source>Page of the manual</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>{bar}, rest</source>
        <translation>{bar}, Pause</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>{bar}, note {number}</source>
        <translation>{bar}, Note {number}</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>{bar}, notes {first}–{last}</source>
        <translation>{bar}, Note {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>{first} to {last}</source>
        <comment>notes</comment>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>held from the note before</source>
        <translation>von der Note davor gehalten</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>slurred to the next</source>
        <translation>an die nächste gebunden</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>hooked to the next</source>
        <translation>an die nächste angehängt</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>fixed on pass {number}</source>
        <translation>fest in Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>retaken</source>
        <translation>neu angesetzt</translation>
    </message>
    <message>
        <location filename="../../app/note_words.py"/>
        <source>{place}: {what}</source>
        <translation>{place}: {what}</translation>
    </message>
    <message>
        <location filename="../../app/notice.py"/>
        <source>Problems in the file</source>
        <translation>Probleme in der Datei</translation>
    </message>
    <message>
        <location filename="../../app/notice.py"/>
        <location filename="../../app/pack_dialog.py"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../../app/notice.py"/>
        <source>Close this notice</source>
        <translation>Diese Mitteilung schließen</translation>
    </message>
    <message>
        <location filename="../../app/opening.py"/>
        <source>The pasted text</source>
        <translation>Der eingefügte Text</translation>
    </message>
    <message>
        <location filename="../../app/opening.py"/>
        <source>There is no text to paste: copy a tune first.</source>
        <translation>Es gibt keinen Text zum Einfügen: zuerst ein Stück kopieren.</translation>
    </message>
    <message>
        <location filename="../../app/opening.py"/>
        <source>{what} is no tune that can be read: {fault}</source>
        <translation>{what} ist kein lesbares Stück: {fault}</translation>
    </message>
    <message>
        <location filename="../../app/opening.py"/>
        <source>Nothing opened yet</source>
        <translation>Noch nichts geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/opening.py"/>
        <source>Reading {name} …</source>
        <translation>{name} wird gelesen …</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/opening.py"/>
        <source>{name} is open; {n} things were repaired or left out on the way.</source>
        <extracomment>one: {name} is open; 1 thing was repaired or left out on the way.</extracomment>
        <translation>
            <numerusform>{name} ist offen; 1 Stelle wurde dabei repariert oder weggelassen.</numerusform>
            <numerusform>{name} ist offen; {n} Stellen wurden dabei repariert oder weggelassen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>make sheets and files of many lessons in one folder, and a zip of all</source>
        <translation>Blätter und Dateien vieler Lektionen in einem Ordner herstellen, dazu eine Zip-Datei von allem</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>lessons and tune books</source>
        <translation>Lektionen und Sammlungen</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>a new folder, or one that holds a pack: only what is missing in it is made</source>
        <translation>ein neuer Ordner oder einer mit einem Paket: Nur was darin fehlt, wird hergestellt</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>processes at a time; as many as processors if left out</source>
        <translation>Prozesse zugleich; ohne Angabe so viele wie Prozessoren</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>what is made of each lesson, of {kinds}; all if left out</source>
        <translation>was aus jeder Lektion hergestellt wird, aus {kinds}; ohne Angabe alles</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <location filename="../../app/pack_work.py"/>
        <source>There is no lesson and no tune book to pack.</source>
        <translation>Es gibt keine Lektion und keine Sammlung zu packen.</translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>Stopped. What is made stands; pack again to make the rest.</source>
        <translation>Angehalten. Was hergestellt ist, bleibt; noch einmal packen, um den Rest herzustellen.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/pack_command.py"/>
        <source>{n} lessons made, {kept} up to date: {path}</source>
        <extracomment>one: 1 lesson made, {kept} up to date: {path}</extracomment>
        <translation>
            <numerusform>1 Lektion hergestellt, {kept} aktuell: {path}</numerusform>
            <numerusform>{n} Lektionen hergestellt, {kept} aktuell: {path}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/pack_command.py"/>
        <source>“{text}” is no number of processes: expected 1 to {most}</source>
        <translation>„{text}“ ist keine Zahl von Prozessen: erwartet wird 1 bis {most}</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <location filename="../../app/pack_form.py"/>
        <location filename="../../app/pack_run.py"/>
        <source>Lesson pack</source>
        <translation>Lektionspaket</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>How far the pack is</source>
        <translation>Wie weit das Paket ist</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>What is being packed</source>
        <translation>Was gerade gepackt wird</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>What came of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>What is not in the pack, and what else there is to tell</source>
        <translation>Was nicht im Paket ist und was sonst zu sagen ist</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>&amp;Make the pack</source>
        <translation>Paket &amp;herstellen</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <location filename="../../app/player_desk.py"/>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>Open the &amp;folder</source>
        <translation>&amp;Ordner öffnen</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <location filename="../../app/pack_run.py"/>
        <source>Reading</source>
        <translation>Lesen:</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>Stopping …</source>
        <translation>Wird angehalten …</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/pack_dialog.py"/>
        <source>{n} lessons were made, {kept} stood already.</source>
        <extracomment>one: 1 lesson was made, {kept} stood already.</extracomment>
        <translation>
            <numerusform>1 Lektion wurde hergestellt, {kept} waren schon da.</numerusform>
            <numerusform>{n} Lektionen wurden hergestellt, {kept} waren schon da.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>The pack is not whole: make it again, and only the rest is made.</source>
        <translation>Das Paket ist nicht vollständig: noch einmal herstellen, dann wird nur der Rest gemacht.</translation>
    </message>
    <message>
        <location filename="../../app/pack_dialog.py"/>
        <source>These are not in the pack:</source>
        <translation>Diese sind nicht im Paket:</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} cannot be used: {reason}.</source>
        <translation>{path} lässt sich nicht benutzen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} holds other files: choose a new folder, or one that holds a pack.</source>
        <translation>{path} enthält andere Dateien: einen neuen Ordner wählen oder einen mit einem Paket.</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} cannot be written.</source>
        <translation>{path} lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} is in use by another program that packs; if none does, delete {file}.</source>
        <translation>{path} wird von einem anderen packenden Programm benutzt; wenn keines läuft, {file} löschen.</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} cannot be used ({fault}); all lessons are made again.</source>
        <translation>{path} lässt sich nicht benutzen ({fault}); alle Lektionen werden neu hergestellt.</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{name}, changed</source>
        <translation>{name}, geändert</translation>
    </message>
    <message>
        <location filename="../../app/pack_folder.py"/>
        <source>{path} was changed since it was packed; it is kept as {kept}.</source>
        <translation>{path} wurde seit dem Packen geändert; es bleibt als {kept} erhalten.</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Each lesson, and each tune of a book, gets a folder with its files; a contents page and a zip of all stand beside them. Packing into the same folder again makes only what is missing or has changed.</source>
        <translation>Jede Lektion und jedes Stück einer Sammlung bekommt einen Ordner mit seinen Dateien; daneben stehen eine Inhaltsseite und eine Zip-Datei von allem. Noch einmal in denselben Ordner gepackt, wird nur hergestellt, was fehlt oder sich geändert hat.</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>&amp;Lessons and tune books</source>
        <translation>&amp;Lektionen und Sammlungen</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Lessons and tune books that go into the pack</source>
        <translation>Lektionen und Sammlungen, die ins Paket kommen</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Add &amp;files…</source>
        <translation>&amp;Dateien hinzufügen…</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Add a f&amp;older…</source>
        <translation>&amp;Ordner hinzufügen…</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <location filename="../../app/set_window.py"/>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Made of each lesson</source>
        <translation>Aus jeder Lektion</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>&amp;Into the folder</source>
        <translation>&amp;In den Ordner</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Folder of the pack</source>
        <translation>Ordner des Pakets</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>Choose the folder of the pack</source>
        <translation>Ordner des Pakets wählen</translation>
    </message>
    <message>
        <location filename="../../app/pack_form.py"/>
        <source>{title} (the lesson on the page)</source>
        <translation>{title} (die Lektion auf dem Blatt)</translation>
    </message>
    <message>
        <location filename="../../app/pack_making.py"/>
        <source>the file was changed while it was packed; pack again</source>
        <translation>die Datei wurde beim Packen geändert; noch einmal packen</translation>
    </message>
    <message>
        <location filename="../../app/pack_making.py"/>
        <source>cannot be written: {reason}</source>
        <translation>lässt sich nicht schreiben: {reason}</translation>
    </message>
    <message>
        <location filename="../../app/pack_run.py"/>
        <source>{done} of {total}</source>
        <translation>{done} von {total}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/pack_run.py"/>
        <source>{n} things repaired or left out on reading; the contents page tells.</source>
        <extracomment>one: 1 thing repaired or left out on reading; the contents page tells.</extracomment>
        <translation>
            <numerusform>1 Stelle beim Lesen repariert oder weggelassen; die Inhaltsseite sagt mehr.</numerusform>
            <numerusform>{n} Stellen beim Lesen repariert oder weggelassen; die Inhaltsseite sagt mehr.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/pack_run.py"/>
        <source>Not read again, so left as packed before, off the contents page: {names}.</source>
        <translation>Nicht wieder gelesen, daher gelassen wie zuletzt gepackt und nicht auf der Inhaltsseite: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/pack_run.py"/>
        <source>Packing</source>
        <translation>Packen:</translation>
    </message>
    <message>
        <location filename="../../app/pack_run.py"/>
        <source>, tune {number}, “{title}”: {why}</source>
        <comment>behind the name of a file</comment>
        <translation>, Stück {number}, „{title}“: {why}</translation>
    </message>
    <message>
        <location filename="../../app/pack_run.py"/>
        <source>Zipping</source>
        <translation>Zip-Datei:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/pack_run.py"/>
        <source>And {n} more.</source>
        <extracomment>one: And 1 more.</extracomment>
        <translation>
            <numerusform>Und 1 weiterer.</numerusform>
            <numerusform>Und {n} weitere.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/pack_sources.py"/>
        <location filename="../../app/shelf_command.py"/>
        <source>{file}: there is no such file or folder.</source>
        <translation>{file}: Es gibt keine solche Datei und keinen solchen Ordner.</translation>
    </message>
    <message>
        <location filename="../../app/pack_sources.py"/>
        <source>{file}: cannot be looked into: {why}.</source>
        <translation>{file}: lässt sich nicht durchsehen: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/pack_work.py"/>
        <source>The pack cannot be written: {reason}.</source>
        <translation>Das Paket lässt sich nicht schreiben: {reason}.</translation>
    </message>
    <message>
        <location filename="../../app/pack_workers.py"/>
        <source>it took longer than {seconds} seconds</source>
        <translation>es dauerte länger als {seconds} Sekunden</translation>
    </message>
    <message>
        <location filename="../../app/pack_workers.py"/>
        <source>the process at work on it was ended by signal {code}</source>
        <translation>der Prozess dafür wurde durch Signal {code} beendet</translation>
    </message>
    <message>
        <location filename="../../app/pack_workers.py"/>
        <source>the process at work on it ended with status {code}</source>
        <translation>der Prozess dafür endete mit Status {code}</translation>
    </message>
    <message>
        <location filename="../../app/pack_workers.py"/>
        <source>the program went wrong ({name}: {fault})</source>
        <translation>das Programm lief auf einen Fehler ({name}: {fault})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/page_notes.py"/>
        <source>{n} bowings</source>
        <extracomment>one: 1 bowing</extracomment>
        <translation>
            <numerusform>1 Strichfassung</numerusform>
            <numerusform>{n} Strichfassungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/page_notes.py"/>
        <source>{name} – preview</source>
        <translation>{name} – Vorschau</translation>
    </message>
    <message>
        <location filename="../../app/page_view.py"/>
        <source>This is a preview, not edited here: Enter takes it, Escape drops it.</source>
        <translation>Das ist eine Vorschau, hier wird nichts geändert: Eingabe übernimmt, Escape verwirft sie.</translation>
    </message>
    <message>
        <location filename="../../app/page_view.py"/>
        <source>Page</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../app/page_words.py"/>
        <source>{note}; accent {how}</source>
        <translation>{note}; Betonung {how}</translation>
    </message>
    <message>
        <location filename="../../app/page_words.py"/>
        <source>{place}: the accent is {how}.</source>
        <translation>{place}: Die Betonung ist {how}.</translation>
    </message>
    <message>
        <location filename="../../app/plan_choices.py"/>
        <source>Choose a note on the page first.</source>
        <translation>Zuerst eine Note auf dem Blatt auswählen.</translation>
    </message>
    <message>
        <location filename="../../app/plan_controls.py"/>
        <source>&amp;Work out</source>
        <translation>&amp;Ausarbeiten</translation>
    </message>
    <message>
        <location filename="../../app/plan_controls.py"/>
        <source>Work out the best bowing and show it on the page</source>
        <translation>Die beste Strichfassung ausarbeiten und auf dem Blatt zeigen</translation>
    </message>
    <message>
        <location filename="../../app/plan_controls.py"/>
        <source>Leave off working it out</source>
        <translation>Das Ausarbeiten abbrechen</translation>
    </message>
    <message>
        <location filename="../../app/plan_controls.py"/>
        <source>Which accents &amp;suit this tune?</source>
        <translation>Welche &amp;Betonungen passen?</translation>
    </message>
    <message>
        <location filename="../../app/plan_controls.py"/>
        <source>Add startin&amp;g versions</source>
        <translation>Aus&amp;gangsfassungen hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Limits of a stroke</source>
        <translation>Grenzen eines Strichs</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>fewest</source>
        <translation>wenige</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>some</source>
        <translation>einige</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <location filename="../../app/plan_words.py"/>
        <source>smooth</source>
        <translation>fließend</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Accents that the planned bowing drives</source>
        <translation>Betonungen, die die geplante Strichfassung treibt</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>How much is slurred</source>
        <translation>Wie viel gebunden wird</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Which bars may change</source>
        <translation>Welche Takte sich ändern dürfen</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>&amp;Keep my slurs and marks</source>
        <translation>Meine Bindebögen und &amp;Zeichen behalten</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Slurs, hooks, fixed marks and retakes stay; unticked, the bars are bowed afresh</source>
        <translation>Bindebögen, Anhängungen, feste Zeichen und Neuansätze bleiben; ohne Häkchen werden die Takte neu gestrichen</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Notes in a planned stroke at most</source>
        <translation>Noten in einem geplanten Strich höchstens</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>How long a planned stroke may last</source>
        <translation>Wie lange ein geplanter Strich dauern darf</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>&amp;Drive</source>
        <translation>&amp;Treiben</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>S&amp;lurs</source>
        <translation>Bin&amp;debögen</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Ba&amp;rs</source>
        <translation>Ta&amp;kte</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Notes at most</source>
        <translation>Noten höchstens</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>Lasts at most</source>
        <translation>Dauer höchstens</translation>
    </message>
    <message>
        <location filename="../../app/plan_form.py"/>
        <source>How much is slurred: {text}</source>
        <translation>Wie viel gebunden wird: {text}</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <location filename="../../app/set_list.py"/>
        <source>Open a tune first.</source>
        <translation>Zuerst ein Stück öffnen.</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Working out the bowing …</source>
        <translation>Die Strichfassung wird ausgearbeitet …</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Looking for the next best …</source>
        <translation>Die nächstbeste wird gesucht …</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Comparing the accent plans …</source>
        <translation>Die Betonungspläne werden verglichen …</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Working out starting versions …</source>
        <translation>Ausgangsfassungen werden ausgearbeitet …</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Left off.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Left off: the lesson was changed meanwhile.</source>
        <translation>Abgebrochen: Die Lektion wurde inzwischen geändert.</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Carry on the bowing</source>
        <translation>Strichfassung fortführen</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Carrying on the bowing …</source>
        <translation>Die Strichfassung wird fortgeführt …</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Plan: {name}</source>
        <translation>Plan: {name}</translation>
    </message>
    <message>
        <location filename="../../app/plan_pane.py"/>
        <source>Add starting versions</source>
        <translation>Ausgangsfassungen hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/plan_preview.py"/>
        <source>Nothing changes here.</source>
        <translation>Hier ändert sich nichts.</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Accents as played. Breaks: bars bowed unlike most of their like, and retakes at a seam without a rest.</source>
        <translation>Betonungen, wie gespielt. Brüche: Takte, die anders gestrichen sind als die meisten ihresgleichen, und Neuansätze an einem Übergang ohne Pause.</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>What is worked out</source>
        <translation>Was ausgearbeitet wird</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Working</source>
        <translation>In Arbeit</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>What was worked out</source>
        <translation>Was ausgearbeitet wurde</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Go to the bar that the sentence names</source>
        <translation>Zu dem Takt gehen, den der Satz nennt</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>The best bowing and the next best</source>
        <translation>Die beste Strichfassung und die nächstbesten</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Choose one to see it on the page; Enter takes it</source>
        <translation>Eine auswählen, um sie auf dem Blatt zu sehen; Eingabe übernimmt sie</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>&amp;Take</source>
        <translation>&amp;Übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <location filename="../../app/preview_banner.py"/>
        <source>Put it in the place of this bowing (Enter)</source>
        <translation>An die Stelle dieser Strichfassung setzen (Eingabe)</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>As a new b&amp;owing</source>
        <translation>Als &amp;neue Fassung</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Keep this bowing and add a new one (Shift+Enter)</source>
        <translation>Diese Strichfassung behalten und eine neue hinzufügen (Umschalt+Eingabe)</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Dro&amp;p</source>
        <translation>Ver&amp;werfen</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <location filename="../../app/preview_banner.py"/>
        <source>Leave the bowing as it is (Esc)</source>
        <translation>Die Strichfassung lassen, wie sie ist (Esc)</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Name of the new bowing</source>
        <translation>Name der neuen Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/plan_results.py"/>
        <source>Go to bar {bar}</source>
        <translation>Zu Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Backbeat</source>
        <translation>Backbeat</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>By phrase</source>
        <translation>Phrasenweise</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Where in the bar the bowing drives</source>
        <translation>Wo im Takt die Strichfassung treibt</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Missed</source>
        <translation>Verfehlt</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Accents not driven, as played</source>
        <translation>Nicht getriebene Betonungen, wie gespielt</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Broken</source>
        <translation>Brüche</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Bars bowed unlike their like, and retakes where parts meet</source>
        <translation>Takte, die anders gestrichen sind als ihresgleichen, und Neuansätze zwischen Teilen</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Slurs as written</source>
        <translation>Bindebögen, wie geschrieben</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Retakes in one playing, the way back to the start included</source>
        <translation>Neuansätze in einem Durchspiel, der Weg zurück zum Anfang eingeschlossen</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>How the accent plans suit this tune</source>
        <translation>Wie die Betonungspläne zum Stück passen</translation>
    </message>
    <message>
        <location filename="../../app/plan_suits.py"/>
        <source>Which accent plan suits this tune</source>
        <translation>Welcher Betonungsplan zum Stück passt</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>Work out a bowing first.</source>
        <translation>Zuerst eine Strichfassung ausarbeiten.</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>No style is chosen: this tune alone says what comes.</source>
        <translation>Kein Stil gewählt: Nur dieses Stück sagt, was kommt.</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>Carry on a bowing first: of its proposal bars can be taken one by one.</source>
        <translation>Zuerst eine Strichfassung fortführen: Vom Vorschlag lassen sich Takte einzeln übernehmen.</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>This bar was given: go to a bar that is proposed first.</source>
        <translation>Dieser Takt war vorgegeben: zuerst zu einem vorgeschlagenen Takt gehen.</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>The bowing is so already; nothing was changed.</source>
        <translation>Die Strichfassung ist schon so; nichts wurde geändert.</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>Carry on in {bars}</source>
        <translation>In {bars} fortführen</translation>
    </message>
    <message>
        <location filename="../../app/plan_taking.py"/>
        <source>Add “{name}”</source>
        <translation>„{name}“ hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>As this bowing has them</source>
        <translation>Wie in dieser Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Accents of our own</source>
        <translation>Eigene Betonungen</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>No accents</source>
        <translation>Ohne Betonungen</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>fewest slurs</source>
        <translation>wenige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>some slurs</source>
        <translation>einige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>All bars</source>
        <translation>Alle Takte</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>The selected bars</source>
        <translation>Die ausgewählten Takte</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>From the marked note on</source>
        <translation>Ab der markierten Note</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>A quarter of a bar</source>
        <translation>Ein Vierteltakt</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Half a bar</source>
        <translation>Ein halber Takt</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Three quarters of a bar</source>
        <translation>Ein Dreivierteltakt</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>A whole bar</source>
        <translation>Ein ganzer Takt</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>beside the best</source>
        <translation>neben der besten</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../core/planner/account.py"/>
        <source>; </source>
        <comment>between clauses</comment>
        <translation>; </translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Best: {slurs}</source>
        <translation>Beste: {slurs}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Best found: {slurs}</source>
        <translation>Beste gefundene: {slurs}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>no accents asked for</source>
        <translation>keine Betonungen verlangt</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>all accents driven</source>
        <translation>alle Betonungen getrieben</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/plan_words.py"/>
        <source>{n} accents not driven</source>
        <extracomment>one: 1 accent not driven</extracomment>
        <translation>
            <numerusform>1 Betonung nicht getrieben</numerusform>
            <numerusform>{n} Betonungen nicht getrieben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/plan_words.py"/>
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} breaks</source>
        <extracomment>one: 1 break</extracomment>
        <translation>
            <numerusform>1 Bruch</numerusform>
            <numerusform>{n} Brüche</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>nothing broken</source>
        <translation>kein Bruch</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>proven best</source>
        <translation>nachweislich die beste</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>the best may miss {count}</source>
        <translation>die beste verfehlt vielleicht {count}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>the best may miss none</source>
        <translation>die beste verfehlt vielleicht keine</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>the best may break {count}</source>
        <translation>die beste hat vielleicht {count} Brüche</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>the best may break none</source>
        <translation>die beste hat vielleicht keinen Bruch</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>at most {percent} % dearer than the best can be</source>
        <translation>höchstens {percent} % teurer, als die beste sein kann</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>best found, not proven: {how_far}</source>
        <translation>beste gefundene, nicht nachgewiesen: {how_far}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>{accents}, {flow}</source>
        <comment>name of a bowing</comment>
        <translation>{accents}, {flow}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>None</source>
        <comment>accents</comment>
        <translation>Keine</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>At {places}</source>
        <comment>accents</comment>
        <translation>Bei {places}</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Added: {names}.</source>
        <translation>Hinzugefügt: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <location filename="../../core/reading/left_out.py"/>
        <source>“{name}”</source>
        <translation>„{name}“</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Nothing changes: the bowing is so already.</source>
        <translation>Nichts ändert sich: Die Strichfassung ist schon so.</translation>
    </message>
    <message>
        <location filename="../../app/plan_words.py"/>
        <source>Every bar changes.</source>
        <translation>Jeder Takt ändert sich.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/plan_words.py"/>
        <source>{count} of {n} bars change.</source>
        <extracomment>one: {count} of 1 bar changes.</extracomment>
        <translation>
            <numerusform>{count} von 1 Takt ändert sich.</numerusform>
            <numerusform>{count} von {n} Takten ändern sich.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/plan_words.py"/>
        <source>{bars} change</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} changes</extracomment>
        <translation>
            <numerusform>{bars} ändert sich</numerusform>
            <numerusform>{bars} ändern sich</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/player.py"/>
        <source>There is nothing to play: no tune is open.</source>
        <translation>Es gibt nichts zu spielen: Kein Stück ist offen.</translation>
    </message>
    <message>
        <location filename="../../app/player.py"/>
        <source>The set is empty.</source>
        <translation>Das Set ist leer.</translation>
    </message>
    <message>
        <location filename="../../app/player.py"/>
        <source>Speed: {speed} % of the tempo.</source>
        <translation>Geschwindigkeit: {speed} % des Tempos.</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Set the rungs of the practice ladder</source>
        <translation>Sprossen der Tempoleiter einstellen</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Levels…</source>
        <translation>Pegel…</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Fiddle, backing, click and count-in</source>
        <translation>Geige, Begleitung, Klick und Einzähler</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Stop and hide the player</source>
        <translation>Anhalten und den Spieler verbergen</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>First bar played</source>
        <translation>Erster gespielter Takt</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Last bar played</source>
        <translation>Letzter gespielter Takt</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Speed, percent of the tempo</source>
        <translation>Geschwindigkeit, Prozent des Tempos</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Speed (F6 slower, F7 faster)</source>
        <translation>Geschwindigkeit (F6 langsamer, F7 schneller)</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>All bars, with repeats</source>
        <translation>Alle Takte, mit Wiederholungen</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Rungs of the practice ladder</source>
        <translation>Sprossen der Tempoleiter</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <location filename="../../app/player_panels.py"/>
        <source>Levels</source>
        <translation>Pegel</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Hide the player</source>
        <translation>Den Spieler verbergen</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>What is heard now</source>
        <translation>Was gerade zu hören ist</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Counting in: {count}</source>
        <translation>Einzählen: {count}</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Bar {number}, pass {pass_number}</source>
        <translation>Takt {number}, {pass_number}. Mal</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Bars</source>
        <translation>Takte</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>Bar {number}</source>
        <translation>Takt {number}</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>{title}: {bar}</source>
        <translation>{title}: {bar}</translation>
    </message>
    <message>
        <location filename="../../app/player_bar.py"/>
        <source>{words} (silent)</source>
        <translation>{words} (stumm)</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>Bow</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <location filename="../../core/checks/words.py"/>
        <source>down-bow</source>
        <translation>Abstrich</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <location filename="../../core/checks/words.py"/>
        <source>up-bow</source>
        <translation>Aufstrich</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>Frog on the left, tip on the right; the upright line is the string</source>
        <translation>Links der Frosch, rechts die Spitze; die senkrechte Linie ist die Saite</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>The bow rests</source>
        <translation>Der Bogen ruht</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>{cm} cm from the frog</source>
        <translation>{cm} cm vom Frosch</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>beyond the hair</source>
        <translation>jenseits des Bezugs</translation>
    </message>
    <message>
        <location filename="../../app/player_bow.py"/>
        <source>{bow}, {where}</source>
        <translation>{bow}, {where}</translation>
    </message>
    <message>
        <location filename="../../app/player_desk.py"/>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../../app/player_desk.py"/>
        <source>Play</source>
        <translation>Spielen</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>No sound device was found: the tune is played in silence.</source>
        <translation>Kein Audiogerät gefunden: Das Stück wird stumm gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>The sound device does not answer: the tune is played in silence.</source>
        <translation>Das Audiogerät antwortet nicht: Das Stück wird stumm gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>The sound server has ended: the tune is played in silence.</source>
        <translation>Der Audiodienst ist beendet: Das Stück wird stumm gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>The sound device cannot be opened: the tune is played in silence.</source>
        <translation>Das Audiogerät lässt sich nicht öffnen: Das Stück wird stumm gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>The tune is played in silence: QtMultimedia cannot be loaded ({why}).</source>
        <translation>Das Stück wird stumm gespielt: QtMultimedia lässt sich nicht laden ({why}).</translation>
    </message>
    <message>
        <location filename="../../app/player_device.py"/>
        <source>The sound device takes no format of ours: the tune is played in silence.</source>
        <translation>Das Audiogerät nimmt keines unserer Formate: Das Stück wird stumm gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Fiddle</source>
        <translation>Geige</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Backing</source>
        <translation>Begleitung</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Click</source>
        <translation>Klick</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Count-in</source>
        <translation>Einzähler</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Rest often. Where shoulder, arm or hand hurts, stop, and ask a teacher or a doctor.</source>
        <translation>Oft ausruhen. Wenn Schulter, Arm oder Hand schmerzt, aufhören und Lehrkraft oder Arzt fragen.</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>{word} is heard</source>
        <translation>{word} ist zu hören</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Level of the {part}, in decibels</source>
        <translation>Pegel ({part}) in Dezibel</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Bars counted in</source>
        <translation>Eingezählte Takte</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Mark behind the sound</source>
        <translation>Markierung hinter dem Klang</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source> ms</source>
        <translation> ms</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>How much later than the computer says the sound is heard; more for wireless headphones</source>
        <translation>Wie viel später als vom Rechner angegeben der Klang zu hören ist; bei Funkkopfhörern mehr</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>{level} dB</source>
        <translation>{level} dB</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Practice ladder</source>
        <translation>Tempoleiter</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>To</source>
        <comment>speed of a ladder</comment>
        <translation>Bis</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>In steps of</source>
        <translation>In Schritten von</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>Times on each</source>
        <translation>Mal je Sprosse</translation>
    </message>
    <message>
        <location filename="../../app/player_panels.py"/>
        <source>{rungs}, {playings} in all.</source>
        <translation>{rungs}, insgesamt {playings}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/player_panels.py"/>
        <source>{n} rungs</source>
        <extracomment>one: 1 rung</extracomment>
        <translation>
            <numerusform>1 Sprosse</numerusform>
            <numerusform>{n} Sprossen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/player_panels.py"/>
        <source>{n} times</source>
        <comment>of a ladder</comment>
        <extracomment>one: 1 time</extracomment>
        <translation>
            <numerusform>1-mal</numerusform>
            <numerusform>{n}-mal</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>PREVIEW</source>
        <translation>VORSCHAU</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>The page shows a preview</source>
        <translation>Das Blatt zeigt eine Vorschau</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Take</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Take the previewed bowing</source>
        <translation>Die Strichfassung der Vorschau übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Take this bar</source>
        <translation>Nur diesen Takt</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Take the bar of the marked note, or those of the selection, and drop the others (Alt+Enter)</source>
        <translation>Den Takt der markierten Note oder die der Auswahl übernehmen und die anderen verwerfen (Alt+Eingabe)</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Take of the previewed bowing the bar of the marked note only</source>
        <translation>Von der Vorschau nur den Takt der markierten Note übernehmen</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Drop</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <location filename="../../app/preview_banner.py"/>
        <source>Drop the previewed bowing</source>
        <translation>Die Strichfassung der Vorschau verwerfen</translation>
    </message>
    <message>
        <location filename="../../app/printing.py"/>
        <source>The printer cannot be used.</source>
        <translation>Der Drucker lässt sich nicht benutzen.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>on the beat</source>
        <comment>accents of some bars</comment>
        <translation>auf dem Schlag</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>on the backbeat</source>
        <comment>accents of some bars</comment>
        <translation>auf dem Backbeat</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>as each phrase does better</source>
        <comment>accents of some bars</comment>
        <translation>was in jeder Phrase besser passt</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>none</source>
        <comment>accents of some bars</comment>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>at places of your own</source>
        <comment>accents of some bars</comment>
        <translation>an eigenen Stellen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Click to {edit}.</source>
        <translation>Klick: {edit}.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Let go to {edit}.</source>
        <translation>Loslassen: {edit}.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Separate {notes}</source>
        <translation>{notes} trennen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Slur {notes}</source>
        <translation>{notes} binden</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Hook {notes}</source>
        <translation>{notes} anhängen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>These notes are one slur already.</source>
        <translation>Diese Noten sind schon ein Bindebogen.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>These notes have bows of their own already.</source>
        <translation>Diese Noten haben schon eigene Striche.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Turn {note} to {bow}</source>
        <translation>{note} zu {bow} umdrehen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Fix {note} as {bow}</source>
        <translation>{note} als {bow} festlegen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Fix {note} as {bow} on pass {number}</source>
        <translation>{note} in Durchgang {number} als {bow} festlegen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>This stroke is fixed as {bow} already.</source>
        <translation>Dieser Strich ist schon als {bow} festgelegt.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Free {note}</source>
        <translation>{note} lösen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Nothing is fixed here: this bow follows from the strokes before it.</source>
        <translation>Hier ist nichts fest: Dieser Strich folgt aus den Strichen davor.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Stop retaking at {note}</source>
        <translation>{note} nicht mehr neu ansetzen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Retake at {note}</source>
        <translation>{note} neu ansetzen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Only a fixed bow mark can be kept to one pass: turn or fix this stroke first.</source>
        <translation>Nur ein festes Strichzeichen lässt sich auf einen Durchgang beschränken: zuerst diesen Strich umdrehen oder festlegen.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Keep the mark at {note} to pass {number} only</source>
        <translation>Zeichen ({note}) nur in Durchgang {number} gelten lassen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Let the mark at {note} hold on every pass</source>
        <translation>Zeichen ({note}) in jedem Durchgang gelten lassen</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>This mark holds on pass {number} only already.</source>
        <translation>Dieses Zeichen gilt schon nur in Durchgang {number}.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>This mark holds on every pass already.</source>
        <translation>Dieses Zeichen gilt schon in jedem Durchgang.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Take the accent from {place}</source>
        <translation>Betonung wegnehmen: {place}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Accent {place}</source>
        <translation>Betonen: {place}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>An accent sign on the note accents this place, whatever the plan.</source>
        <translation>Ein Akzentzeichen auf der Note betont diese Stelle, was immer der Plan sagt.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Accents of {bars}: {plan}</source>
        <translation>Betonungen ({bars}): {plan}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>These bars have this accent plan already.</source>
        <translation>Diese Takte haben diesen Betonungsplan schon.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Take a {ornament} from {notes}</source>
        <translation>{ornament} wegnehmen: {notes}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Put a {ornament} on {notes}</source>
        <translation>{ornament} setzen: {notes}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>the tune</source>
        <translation>das Stück</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <location filename="../../core/checks/words.py"/>
        <location filename="../../core/style/habits.py"/>
        <source>the pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>bars {first}–{last}</source>
        <translation>Takt {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>This note has a bow of its own already.</source>
        <translation>Diese Note hat schon einen eigenen Strich.</translation>
    </message>
    <message>
        <location filename="../../app/proposals.py"/>
        <source>Nothing would change.</source>
        <translation>Nichts würde sich ändern.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/quiet_menus.py"/>
        <source>{n} rules are turned down …</source>
        <extracomment>one: 1 rule is turned down …</extracomment>
        <translation>
            <numerusform>1 Regel ist leiser gestellt …</numerusform>
            <numerusform>{n} Regeln sind leiser gestellt …</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell “{rule}” as a note</source>
        <translation>„{rule}“ nur als Hinweis melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Do not tell “{rule}”</source>
        <translation>„{rule}“ nicht melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell “{rule}” as it is</source>
        <translation>„{rule}“ wieder melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell all rules as they are</source>
        <translation>Alle Regeln wieder melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell this as it is again</source>
        <translation>Wieder melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell this as a note</source>
        <translation>Nur als Hinweis melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Do not tell this in this lesson</source>
        <translation>In dieser Lektion nicht melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>Tell again as it is</source>
        <translation>Wieder melden</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>{rule} (not told now)</source>
        <translation>{rule} (jetzt nicht gemeldet)</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>{rule} (a note now)</source>
        <translation>{rule} (jetzt ein Hinweis)</translation>
    </message>
    <message>
        <location filename="../../app/quiet_menus.py"/>
        <source>All rules</source>
        <translation>Alle Regeln</translation>
    </message>
    <message>
        <location filename="../../app/recovery.py"/>
        <source>No recovery copy of this lesson can be kept: {why}. Save it soon.</source>
        <translation>Von dieser Lektion lässt sich keine Sicherungskopie halten: {why}. Bald speichern.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <location filename="../../core/pack/contents.py"/>
        <source>Tune</source>
        <translation>Stück</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Last edit</source>
        <translation>Letzte Änderung</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Edits</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>never saved</source>
        <translation>nie gespeichert</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>&amp;Throw away</source>
        <translation>&amp;Wegwerfen</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>&amp;Throw away for good</source>
        <translation>Endgültig &amp;wegwerfen</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Lessons that were not saved</source>
        <translation>Nicht gesicherte Lektionen</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>The program ended before these lessons were saved. They are as they stood then.</source>
        <translation>Das Programm endete, bevor diese Lektionen gespeichert waren. Sie sind, wie sie damals standen.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>About the chosen lesson</source>
        <translation>Über die gewählte Lektion</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <location filename="../../app/shelf_table.py"/>
        <source>&amp;Open</source>
        <translation>&amp;Öffnen</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>&amp;Keep for later</source>
        <translation>Für später &amp;behalten</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Press once more to throw this lesson away. There is no way back.</source>
        <translation>Noch einmal drücken, um diese Lektion wegzuwerfen. Es gibt kein Zurück.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>It cannot be thrown away: {path} is protected.</source>
        <translation>Sie lässt sich nicht wegwerfen: {path} ist geschützt.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>This copy cannot be read. It stands in {path}.</source>
        <translation>Diese Kopie ist nicht lesbar. Sie liegt in {path}.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>It was never saved in a file of its own.</source>
        <translation>Sie wurde nie in einer eigenen Datei gespeichert.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Its file was {file}, which is not there now.</source>
        <translation>Ihre Datei war {file}, die jetzt nicht da ist.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Its file is {file}, which has been changed since. Saving will ask which of the two to keep.</source>
        <translation>Ihre Datei ist {file}, die seither geändert wurde. Beim Speichern wird gefragt, welche Fassung bleibt.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_dialog.py"/>
        <source>Its file is {file}.</source>
        <translation>Ihre Datei ist {file}.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_offer.py"/>
        <source>All lessons were saved.</source>
        <translation>Alle Lektionen waren gespeichert.</translation>
    </message>
    <message>
        <location filename="../../app/recovery_offer.py"/>
        <source>“{title}” is open as it stood, and is not saved yet. {about}</source>
        <translation>„{title}“ ist offen, wie es stand, und noch nicht gespeichert. {about}</translation>
    </message>
    <message>
        <location filename="../../app/remedy_panel.py"/>
        <source>Looking for a change that mends it …</source>
        <translation>Eine Abhilfe wird gesucht …</translation>
    </message>
    <message>
        <location filename="../../app/remedy_panel.py"/>
        <source>No single change mends this without doing harm elsewhere. It can stay as it is, or Plan (F9) works out several.</source>
        <translation>Keine einzelne Änderung behebt das, ohne anderswo zu schaden. Es kann so bleiben, oder Planen (F9) findet mehrere.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/samples.py"/>
        <source>{book} ({n} tunes)</source>
        <extracomment>one: {book} (1 tune)</extracomment>
        <translation>
            <numerusform>{book} (1 Stück)</numerusform>
            <numerusform>{book} ({n} Stücke)</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/samples.py"/>
        <source>{title} (finished lesson)</source>
        <translation>{title} (fertige Lektion)</translation>
    </message>
    <message>
        <location filename="../../app/saving.py"/>
        <source>{name} has been changed by another window or program since this lesson was read from it.</source>
        <translation>{name} wurde von einem anderen Fenster oder Programm geändert, seit diese Lektion daraus gelesen wurde.</translation>
    </message>
    <message>
        <location filename="../../app/saving.py"/>
        <source>There is a file {name} already.</source>
        <translation>Es gibt schon eine Datei {name}.</translation>
    </message>
    <message>
        <location filename="../../app/saving.py"/>
        <source>Saved in {name}.</source>
        <translation>In {name} gespeichert.</translation>
    </message>
    <message>
        <location filename="../../app/saving.py"/>
        <source>Saved in {name}. What stood there is kept in {kept}.</source>
        <translation>In {name} gespeichert. Was dort stand, bleibt in {kept} erhalten.</translation>
    </message>
    <message>
        <location filename="../../app/set_adding.py"/>
        <source>&amp;Add a tune</source>
        <translation>&amp;Stück hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/set_adding.py"/>
        <source>The tune on the &amp;page</source>
        <translation>Das Stück auf dem &amp;Blatt</translation>
    </message>
    <message>
        <location filename="../../app/set_adding.py"/>
        <source>From the &amp;open book…</source>
        <translation>Aus der &amp;offenen Sammlung…</translation>
    </message>
    <message>
        <location filename="../../app/set_adding.py"/>
        <source>From a &amp;file…</source>
        <translation>Aus einer &amp;Datei…</translation>
    </message>
    <message>
        <location filename="../../app/set_adding.py"/>
        <source>the open book</source>
        <translation>der offenen Sammlung</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>{text}: expected {form}, such as book.abc#3x2 for its tune 3, played twice</source>
        <translation>{text}: erwartet wird {form} wie book.abc#3x2 für sein Stück 3, zweimal gespielt</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>{text}: a tune of a set is played 1 to {most} times</source>
        <translation>{text}: Ein Stück eines Sets wird 1- bis {most}-mal gespielt</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>A set holds at most {most} tunes; there are {count}.</source>
        <translation>Ein Set fasst höchstens {most} Stücke; es sind {count}.</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>{file}: a book of {count} tunes: expected one of them, such as {first}</source>
        <translation>{file}: eine Sammlung von {count} Stücken: erwartet wird eines davon wie {first}</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>{file}: no tune {number}; there is {numbers}</source>
        <translation>{file}: kein Stück {number}; es gibt {numbers}</translation>
    </message>
    <message>
        <location filename="../../app/set_entries.py"/>
        <source>{file}: no bowing named “{wanted}”; there is {there}</source>
        <translation>{file}: keine Strichfassung namens „{wanted}“; es gibt {there}</translation>
    </message>
    <message>
        <location filename="../../app/set_list.py"/>
        <source>A set holds at most {most} tunes.</source>
        <translation>Ein Set fasst höchstens {most} Stücke.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/set_report.py"/>
        <source>Set of {n} tunes</source>
        <extracomment>one: Set of 1 tune</extracomment>
        <translation>
            <numerusform>Set aus 1 Stück</numerusform>
            <numerusform>Set aus {n} Stücken</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>the set comes round</source>
        <translation>das Set geht rund auf</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>the set does not come round</source>
        <translation>das Set geht nicht rund auf</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>mended in {tune}: {edit}</source>
        <translation>Abhilfe in {tune}: {edit}</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>{cost}.</source>
        <comment>of an order of tunes</comment>
        <translation>{cost}.</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>No other order does better than this one: {cost}.</source>
        <translation>Keine andere Reihenfolge ist besser als diese: {cost}.</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>As it stands: {cost}; in the order {places}: {best}, and it comes round.</source>
        <translation>So, wie es steht: {cost}; in der Reihenfolge {places}: {best}, und es geht rund auf.</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>As it stands: {cost}; in the order {places}: {best}.</source>
        <translation>So, wie es steht: {cost}; in der Reihenfolge {places}: {best}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/set_report.py"/>
        <source>{n} turned joins</source>
        <extracomment>one: 1 turned join</extracomment>
        <translation>
            <numerusform>1 umgedrehter Übergang</numerusform>
            <numerusform>{n} umgedrehte Übergänge</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>no turned joins</source>
        <translation>keine umgedrehten Übergänge</translation>
    </message>
    <message>
        <location filename="../../app/set_report.py"/>
        <source>no retakes</source>
        <translation>keine Neuansätze</translation>
    </message>
    <message>
        <location filename="../../app/set_rows.py"/>
        <source>on the page</source>
        <translation>auf dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/set_rows.py"/>
        <source>in no file</source>
        <translation>in keiner Datei</translation>
    </message>
    <message>
        <location filename="../../app/set_rows.py"/>
        <source>{bowing}, {times} ({where})</source>
        <translation>{bowing}, {times} ({where})</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Add the tunes in the order you play them, and how the bow comes from each to the next stands between them.</source>
        <translation>Die Stücke in der Spielreihenfolge hinzufügen; wie der Bogen von einem zum nächsten kommt, steht dazwischen.</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Set of tunes</source>
        <translation>Set von Stücken</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Tunes of the set and the joins between them</source>
        <translation>Stücke des Sets und die Übergänge dazwischen</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Bowing of the chosen tune</source>
        <translation>Strichfassung des gewählten Stücks</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Times through the chosen tune</source>
        <translation>Wie oft das gewählte Stück gespielt wird</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>&amp;Times</source>
        <translation>&amp;Mal</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Whether the set comes round, and the best order</source>
        <translation>Ob das Set rund aufgeht, und die beste Reihenfolge</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Play them in &amp;that order</source>
        <translation>In &amp;dieser Reihenfolge spielen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/set_window.py"/>
        <source>{n} tunes of the last set cannot be read again.</source>
        <extracomment>one: One tune of the last set cannot be read again.</extracomment>
        <translation>
            <numerusform>Ein Stück des letzten Sets lässt sich nicht wieder lesen.</numerusform>
            <numerusform>{n} Stücke des letzten Sets lassen sich nicht wieder lesen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>The set comes round.</source>
        <translation>Das Set geht rund auf.</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>The set does not come round as it began.</source>
        <translation>Das Set geht nicht rund auf.</translation>
    </message>
    <message>
        <location filename="../../app/set_window.py"/>
        <source>Orders are compared of up to {most} tunes.</source>
        <translation>Reihenfolgen werden bei bis zu {most} Stücken verglichen.</translation>
    </message>
    <message>
        <location filename="../../app/severity_signs.py"/>
        <source>Fault</source>
        <comment>severity</comment>
        <translation>Fehler</translation>
    </message>
    <message>
        <location filename="../../app/severity_signs.py"/>
        <source>Warning</source>
        <comment>severity</comment>
        <translation>Warnung</translation>
    </message>
    <message>
        <location filename="../../app/severity_signs.py"/>
        <source>Note</source>
        <comment>severity</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <location filename="../../app/sheet_choice.py"/>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_choice.py"/>
        <source>Pri&amp;nt…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <location filename="../../app/sheet_choice.py"/>
        <source>E&amp;xport as PDF…</source>
        <translation>Als &amp;PDF exportieren…</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>print bowings to a PDF file</source>
        <translation>Strichfassungen in eine PDF-Datei drucken</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>with --kind set each is {form}</source>
        <translation>mit --kind set ist jede {form}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>these bowings in this order; all where left out</source>
        <translation>diese Strichfassungen in dieser Reihenfolge; ohne Angabe alle</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>what the sheet is for; plain where left out</source>
        <translation>wofür das Blatt ist; ohne Angabe plain</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>begin with the sheet that the first lesson keeps</source>
        <translation>mit dem Blatt beginnen, das die erste Lektion behalten hat</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>which strokes carry a bow mark</source>
        <translation>welche Striche ein Strichzeichen tragen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>how large the music is</source>
        <translation>wie groß die Noten sind</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>the paper lies on its long side</source>
        <translation>das Papier liegt quer</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>how often each page stands on a paper</source>
        <translation>wie oft jede Seite auf einem Papier steht</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>of an exercise: {drills}</source>
        <translation>einer Aufgabe: {drills}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>leave an exercise&apos;s bowing out from bar N on</source>
        <translation>die Strichfassung einer Aufgabe ab Takt N weglassen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>before the music; a heading ends in a colon</source>
        <translation>vor den Noten; eine Überschrift endet mit einem Doppelpunkt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>text after the music</source>
        <translation>Text nach den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>one line at the foot of every page</source>
        <translation>eine Zeile am Fuß jeder Seite</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>what the check finds</source>
        <translation>was die Prüfung findet</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>the totals of each bowing</source>
        <translation>die Zahlen jeder Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>how accents are met, under each line</source>
        <translation>wie Betonungen getroffen werden, unter jeder Zeile</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>what the signs mean</source>
        <translation>was die Zeichen bedeuten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>where the tune comes from</source>
        <translation>woher das Stück kommt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>a word on resting and on pain</source>
        <translation>ein Wort über Pausen und Schmerzen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>the key of an exercise</source>
        <translation>die Lösung einer Aufgabe</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <location filename="../../app/sound_command.py"/>
        <source>{file}: no bowing named “{missing}”; there is {names}</source>
        <translation>{file}: keine Strichfassung namens „{missing}“; es gibt {names}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_command.py"/>
        <source>“{text}” is no bar number: expected 0, 1, 2 ...</source>
        <translation>„{text}“ ist keine Taktnummer: erwartet wird 0, 1, 2 ...</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>{text}</source>
        <comment>credit</comment>
        <translation>{text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Words: {text}</source>
        <comment>credit</comment>
        <translation>Worte: {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>arr. {text}</source>
        <comment>credit</comment>
        <translation>Arr. {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Origin: {text}</source>
        <comment>credit</comment>
        <translation>Herkunft: {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Area: {text}</source>
        <comment>credit</comment>
        <translation>Gegend: {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Source: {text}</source>
        <comment>credit</comment>
        <translation>Quelle: {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Book: {text}</source>
        <comment>credit</comment>
        <translation>Buch: {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Transcribed by {text}</source>
        <comment>credit</comment>
        <translation>Aufgezeichnet von {text}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>The check finds nothing to tell.</source>
        <translation>Die Prüfung findet nichts zu melden.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_content.py"/>
        <source>{title} and {n} more</source>
        <extracomment>one: {title} and 1 more</extracomment>
        <translation>
            <numerusform>{title} und 1 weiteres</numerusform>
            <numerusform>{title} und {n} weitere</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Key: {title}</source>
        <comment>of an exercise</comment>
        <translation>Lösung: {title}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <location filename="../../app/totals_view.py"/>
        <source>Totals</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>What the check tells</source>
        <translation>Was die Prüfung meldet</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Accents aimed at: {plan}. {totals}</source>
        <translation>Angestrebte Betonungen: {plan}. {totals}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>{reach} Strings: {strings}. Played once through, with all repeats.</source>
        <translation>{reach} Saiten: {strings}. Einmal durchgespielt, mit allen Wiederholungen.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_content.py"/>
        <source>Played {times}.</source>
        <translation>Wird {times} gespielt.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_dialog.py"/>
        <source>Tick at least one bowing.</source>
        <translation>Mindestens eine Strichfassung ankreuzen.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_dialog.py"/>
        <source>The pages are being set …</source>
        <translation>Die Seiten werden gesetzt …</translation>
    </message>
    <message>
        <location filename="../../app/sheet_dialog.py"/>
        <location filename="../../core/pack/contents.py"/>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_dialog.py"/>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_dialog.py"/>
        <source>Keep this sheet in the lesson, for the next time</source>
        <translation>Dieses Blatt für das nächste Mal in der Lektion behalten</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_dialog.py"/>
        <source>{n} pages.</source>
        <extracomment>one: 1 page.</extracomment>
        <translation>
            <numerusform>1 Seite.</numerusform>
            <numerusform>{n} Seiten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_dialog.py"/>
        <source>{n} pages; {copies} copies do not fit on one, one can.</source>
        <extracomment>one: 1 page; {copies} copies do not fit on one, one can.</extracomment>
        <translation>
            <numerusform>1 Seite; {copies} Kopien passen nicht auf eine, eine passt.</numerusform>
            <numerusform>{n} Seiten; {copies} Kopien passen nicht auf eine, eine passt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_dialog.py"/>
        <source>{n} pages; {copies} copies do not fit on one, {fitting} can.</source>
        <extracomment>one: 1 page; {copies} copies do not fit on one, {fitting} can.</extracomment>
        <translation>
            <numerusform>1 Seite; {copies} Kopien passen nicht auf eine, {fitting} passen.</numerusform>
            <numerusform>{n} Seiten; {copies} Kopien passen nicht auf eine, {fitting} passen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../core/pack/contents.py"/>
        <source>Bowings</source>
        <translation>Strichfassungen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>The bowings one after the other, and nothing else.</source>
        <translation>Die Strichfassungen nacheinander und sonst nichts.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Teacher&apos;s sheet</source>
        <translation>Lehrerblatt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>All bowings with their totals and what the check finds in them.</source>
        <translation>Alle Strichfassungen mit ihren Zahlen und dem, was die Prüfung darin findet.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Class sheet</source>
        <translation>Klassenblatt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>To play from: as large as the page allows, with what the signs mean.</source>
        <translation>Zum Spielen: so groß, wie die Seite erlaubt, mit der Bedeutung der Zeichen.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Exercise</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>The bowing is left out, to be written in; the key is a page of its own.</source>
        <translation>Die Strichfassung fehlt und ist einzutragen; die Lösung ist eine eigene Seite.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Tunes one after the other, and how the bow comes from each to the next.</source>
        <translation>Stücke nacheinander und wie der Bogen von einem zum nächsten kommt.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>As large as the page allows</source>
        <translation>So groß, wie die Seite erlaubt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>For a small screen</source>
        <translation>Für einen kleinen Bildschirm</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>On every stroke</source>
        <translation>Auf jedem Strich</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Where each bar begins</source>
        <translation>Am Anfang jedes Taktes</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Only where needed to read the rest</source>
        <translation>Nur wo zum Lesen der übrigen nötig</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>One</source>
        <comment>copies</comment>
        <translation>Eine</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Two, to be cut apart</source>
        <comment>copies</comment>
        <translation>Zwei, zum Auseinanderschneiden</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Four, to be cut apart</source>
        <comment>copies</comment>
        <translation>Vier, zum Auseinanderschneiden</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>None: the bowing as it is</source>
        <translation>Keine: die Strichfassung, wie sie ist</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Show under each line how &amp;accents are met</source>
        <translation>Unter jeder Zeile zeigen, wie &amp;Betonungen getroffen werden</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Say what the si&amp;gns mean</source>
        <translation>Sagen, was die &amp;Zeichen bedeuten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>the beginning</source>
        <translation>dem Anfang</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>bar </source>
        <translation>Takt </translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Print the ke&amp;y on a page of its own</source>
        <translation>&amp;Lösung auf eigener Seite drucken</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Heading before the music</source>
        <translation>Überschrift vor den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Text before the music</source>
        <translation>Text vor den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Heading after the music</source>
        <translation>Überschrift nach den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Text after the music</source>
        <translation>Text nach den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Totals of each bowing</source>
        <translation>&amp;Zahlen jeder Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>What the &amp;check finds in it</source>
        <translation>Was die &amp;Prüfung darin findet</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Where the tune c&amp;omes from</source>
        <translation>Wo&amp;her das Stück kommt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>A word on resting and on &amp;pain</source>
        <translation>Ein &amp;Wort über Pausen und Schmerzen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Class, date …</source>
        <translation>Klasse, Datum …</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>On its &amp;long side</source>
        <translation>&amp;Querformat</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>K&amp;ind of sheet</source>
        <translation>A&amp;rt des Blatts</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Bowings</source>
        <translation>&amp;Strichfassungen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Size</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Bow &amp;marks</source>
        <translation>Strich&amp;zeichen</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Drill</source>
        <translation>&amp;Übung</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Leave out &amp;from</source>
        <translation>&amp;Weglassen ab</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Be&amp;fore the music</source>
        <translation>&amp;Vor den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Afte&amp;r the music</source>
        <translation>&amp;Nach den Noten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Foot of the pa&amp;ge</source>
        <translation>Fuß&amp;zeile</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Paper</source>
        <translation>Pap&amp;ierformat</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>C&amp;opies on a page</source>
        <translation>&amp;Kopien je Seite</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>M&amp;usic</source>
        <translation>N&amp;oten</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>&amp;Words</source>
        <translation>Te&amp;xt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Pap&amp;er</source>
        <translation>&amp;Papier</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_form.py"/>
        <source>The {n} tunes of the set in hand.</source>
        <extracomment>one: The tune of the set in hand.</extracomment>
        <translation>
            <numerusform>Das Stück des aktuellen Sets.</numerusform>
            <numerusform>Die {n} Stücke des aktuellen Sets.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>No set is in hand: this tune alone.</source>
        <translation>Kein Set vorhanden: nur dieses Stück.</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Bowings on the sheet</source>
        <translation>Strichfassungen auf dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>Heading</source>
        <translation>Überschrift</translation>
    </message>
    <message>
        <location filename="../../app/sheet_form.py"/>
        <source>What to listen for, homework …</source>
        <translation>Worauf zu hören ist, Hausaufgaben …</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>lighter: follows from the bow before</source>
        <translation>heller: folgt aus dem Strich davor</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>row {first}: first time, row {next}: next time</source>
        <translation>Reihe {first}: erstes Mal, Reihe {next}: nächstes Mal</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>lift, take the same bow again</source>
        <translation>abheben, denselben Strich noch einmal</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>dots under a slur: stop the bow, go on the same way</source>
        <translation>Punkte unter einem Bogen: anhalten, in derselben Richtung weiter</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>~ roll</source>
        <translation>~ Roll</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>/ cut</source>
        <translation>/ Cut</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>3 and a slash through the stem: bowed triplet, three quick bows on the note</source>
        <translation>3 und ein Strich durch den Hals: gestrichene Triole, drei schnelle Striche auf der Note</translation>
    </message>
    <message>
        <location filename="../../app/sheet_legend.py"/>
        <source>accent {how}</source>
        <translation>Betonung {how}</translation>
    </message>
    <message>
        <location filename="../../app/sheet_preview.py"/>
        <source>Preview of the pages</source>
        <translation>Vorschau der Seiten</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sheet_preview.py"/>
        <source>{n} pages</source>
        <extracomment>one: 1 page</extracomment>
        <translation>
            <numerusform>1 Seite</numerusform>
            <numerusform>{n} Seiten</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>keep a catalogue of lessons and tune books, and find tunes in it</source>
        <translation>einen Katalog von Lektionen und Sammlungen führen und Stücke darin finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>put folders or files on the shelf and read what is new in them</source>
        <translation>Ordner oder Dateien ins Regal stellen und lesen, was darin neu ist</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>where none is given, all that is on the shelf is looked through again</source>
        <translation>ohne Angabe wird alles im Regal neu durchgesehen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>first set the catalogue aside and begin a new one; what you noted is kept</source>
        <translation>zuerst den Katalog beiseitelegen und einen neuen beginnen; die eigenen Vermerke bleiben erhalten</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>find tunes by words, dance, key, metre or first notes</source>
        <translation>Stücke nach Wörtern, Tanz, Tonart, Taktart oder Anfangsnoten finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>put tunes in the order in which they lie best under an accent plan</source>
        <translation>Stücke danach ordnen, wie gut sie unter einem Betonungsplan liegen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>on-beat (where left out), backbeat, by-phrase, or places such as 0,2</source>
        <translation>on-beat (ohne Angabe), backbeat, by-phrase oder Stellen wie 0,2</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>show the best N only</source>
        <translation>nur die besten N zeigen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>beginnings of words in titles, tags and credits</source>
        <translation>Wortanfänge in Titeln, Schlagwörtern und Angaben</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>such as reel, or jig for slip jigs too</source>
        <translation>wie reel, oder jig auch für Slip Jigs</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>D for any mode on D, or D major, Edor, F#m</source>
        <translation>D für jedes Tongeschlecht auf D, oder D major, Edor, F#m</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>how it begins: u, d, s for up, down, same, or note names such as dBAF</source>
        <translation>wie es beginnt: u, d, s für auf, ab, gleich, oder Notennamen wie dBAF</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>find the note names in every key</source>
        <translation>die Notennamen in jeder Tonart finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>may be given more than once</source>
        <translation>darf mehrmals angegeben werden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>words of a bowing&apos;s name, or its accent plan</source>
        <translation>Wörter aus dem Namen einer Strichfassung oder ihr Betonungsplan</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>{fault} “bowbench shelf add --rebuild” does that.</source>
        <translation>{fault} „bowbench shelf add --rebuild“ tut das.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_command.py"/>
        <source>The old catalogue is now {old}; what you noted of {n} tunes is kept.</source>
        <extracomment>one: The old catalogue is now {old}; what you noted of 1 tune is kept.</extracomment>
        <translation>
            <numerusform>Der alte Katalog ist jetzt {old}; die Vermerke zu 1 Stück bleiben erhalten.</numerusform>
            <numerusform>Der alte Katalog ist jetzt {old}; die Vermerke zu {n} Stücken bleiben erhalten.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>The shelf is empty: name a folder or a file to put on it.</source>
        <translation>Das Regal ist leer: einen Ordner oder eine Datei angeben, um sie hineinzustellen.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_command.py"/>
        <source>{n} tunes on the shelf; {scan}.</source>
        <extracomment>one: 1 tune on the shelf; {scan}.</extracomment>
        <translation>
            <numerusform>1 Stück im Regal; {scan}.</numerusform>
            <numerusform>{n} Stücke im Regal; {scan}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_command.py"/>
        <source>missed {missed}, broken {broken}, {slurs} in {n} bars played — {tune}</source>
        <extracomment>one: missed {missed}, broken {broken}, {slurs} in 1 bar played — {tune}</extracomment>
        <translation>
            <numerusform>verfehlt {missed}, Brüche {broken}, {slurs} in 1 gespielten Takt – {tune}</numerusform>
            <numerusform>verfehlt {missed}, Brüche {broken}, {slurs} in {n} gespielten Takten – {tune}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>No such tune on the shelf.</source>
        <translation>Kein solches Stück im Regal.</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>The shelf is empty: “bowbench shelf add FOLDER” puts tunes on it.</source>
        <translation>Das Regal ist leer: „bowbench shelf add FOLDER“ stellt Stücke hinein.</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <location filename="../../app/shelf_model.py"/>
        <source>{file}, tune {number}</source>
        <translation>{file}, Stück {number}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_command.py"/>
        <source>{n} files: {new} new, {changed} changed, {moved} moved, {back} back, {gone} gone</source>
        <extracomment>one: 1 file: {new} new, {changed} changed, {moved} moved, {back} back, {gone} gone</extracomment>
        <translation>
            <numerusform>1 Datei: {new} neu, {changed} geändert, {moved} verschoben, {back} wieder da, {gone} fort</numerusform>
            <numerusform>{n} Dateien: {new} neu, {changed} geändert, {moved} verschoben, {back} wieder da, {gone} fort</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>{done} of {total} tunes  {name}</source>
        <translation>{done} von {total} Stücken  {name}</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>{done} of {total} files  {name}</source>
        <translation>{done} von {total} Dateien  {name}</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>Looking ...</source>
        <translation>Wird durchgesehen ...</translation>
    </message>
    <message>
        <location filename="../../app/shelf_command.py"/>
        <source>“{text}” is no number of tunes: expected 1 or more</source>
        <translation>„{text}“ ist keine Zahl von Stücken: erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <location filename="../../app/shelf_dock.py"/>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Any dance</source>
        <translation>Jeder Tanz</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Any key</source>
        <translation>Jede Tonart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Any metre</source>
        <translation>Jede Taktart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Any status</source>
        <translation>Jeder Stand</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <location filename="../../core/pack/contents.py"/>
        <source>Dance</source>
        <translation>Tanz</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <location filename="../../core/pack/contents.py"/>
        <source>Key</source>
        <translation>Tonart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <source>Metre</source>
        <translation>Taktart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <location filename="../../app/shelf_model.py"/>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find tunes of one dance only</source>
        <translation>Nur Stücke eines Tanzes finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find tunes of one key only</source>
        <translation>Nur Stücke einer Tonart finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find tunes of one metre only</source>
        <translation>Nur Stücke einer Taktart finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find tunes of one status only</source>
        <translation>Nur Stücke eines Standes finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <location filename="../../core/shelf/query.py"/>
        <source>no key</source>
        <translation>keine Tonart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find by title, tag, composer …</source>
        <translation>Nach Titel, Schlagwort, Komponist suchen …</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Words of the tune</source>
        <translation>Wörter des Stücks</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Beginnings of words in titles, tags, credits and file names</source>
        <translation>Wortanfänge in Titeln, Schlagwörtern, Angaben und Dateinamen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>First notes: u d s, or dBAF</source>
        <translation>Anfangsnoten: u d s oder dBAF</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>First notes of the tune</source>
        <translation>Anfangsnoten des Stücks</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>How the tune begins: u, d and s for up, down and same, or names of notes (DD for two D)</source>
        <translation>Wie das Stück beginnt: u, d und s für auf, ab und gleich, oder Notennamen (DD für zwei D)</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>in any key</source>
        <translation>jede Tonart</translation>
    </message>
    <message>
        <location filename="../../app/shelf_filters.py"/>
        <source>Find the names of notes in every key</source>
        <translation>Die Notennamen in jeder Tonart finden</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>Tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>Last opened</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>Status of the tune</source>
        <translation>Stand des Stücks</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>Double-click, or press S, to choose a status</source>
        <translation>Doppelklicken oder S drücken, um einen Stand zu wählen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>Double-click, or press T, to type tags with commas between</source>
        <translation>Doppelklicken oder T drücken, um Schlagwörter mit Kommas einzugeben</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>{bowing}, accents {plan}</source>
        <translation>{bowing}, Betonungen {plan}</translation>
    </message>
    <message>
        <location filename="../../app/shelf_model.py"/>
        <source>{parts}, {bars}, {key}, begins {notes}</source>
        <translation>{parts}, {bars}, {key}, beginnt {notes}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_model.py"/>
        <source>{n} parts</source>
        <extracomment>one: 1 part</extracomment>
        <translation>
            <numerusform>1 Teil</numerusform>
            <numerusform>{n} Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_model.py"/>
        <source>{n} bars</source>
        <extracomment>one: 1 bar</extracomment>
        <translation>
            <numerusform>1 Takt</numerusform>
            <numerusform>{n} Takte</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>The shelf is empty. Add the folders in which your lessons and tune books lie: Bowbench reads them, never changes them, and finds every tune by its words, its dance, its key or its first notes.</source>
        <translation>Das Regal ist leer. Die Ordner hinzufügen, in denen die Lektionen und Sammlungen liegen: Bowbench liest sie, ändert sie nie und findet jedes Stück nach seinen Wörtern, seinem Tanz, seiner Tonart oder seinen Anfangsnoten.</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>There are no lessons or tune books (.musicxml, .mxl, .abc) in what is on the shelf.</source>
        <translation>In dem, was im Regal steht, gibt es keine Lektionen oder Sammlungen (.musicxml, .mxl, .abc).</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Add a folder…</source>
        <translation>Ordner hinzufügen…</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Add the tunes to try</source>
        <translation>Stücke zum Probieren hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Build the shelf anew</source>
        <translation>Regal neu aufbauen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Reading files of the shelf</source>
        <translation>Dateien des Regals werden gelesen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Folders</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Add folders, look through them again, take them off the shelf</source>
        <translation>Ordner hinzufügen, neu durchsehen, aus dem Regal nehmen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>There is no tune to learn from: put folders with bowed lessons on the shelf first.</source>
        <translation>Es gibt kein Stück zum Lernen: zuerst Ordner mit gestrichenen Lektionen ins Regal stellen.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>Reading {done} of {n} files …</source>
        <extracomment>one: Reading {done} of 1 file …</extracomment>
        <translation>
            <numerusform>{done} von 1 Datei gelesen …</numerusform>
            <numerusform>{done} von {n} Dateien gelesen …</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Looking through folders …</source>
        <translation>Ordner werden durchgesehen …</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} files or folders on the shelf cannot be read.</source>
        <extracomment>one: 1 file or folder on the shelf cannot be read.</extracomment>
        <translation>
            <numerusform>1 Datei oder Ordner im Regal ist nicht lesbar.</numerusform>
            <numerusform>{n} Dateien oder Ordner im Regal sind nicht lesbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <source>{n} tunes</source>
        <extracomment>one: 1 tune</extracomment>
        <translation>
            <numerusform>1 Stück</numerusform>
            <numerusform>{n} Stücke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <location filename="../../app/tune_chooser.py"/>
        <source>{found} of {n} tunes</source>
        <extracomment>one: {found} of 1 tune</extracomment>
        <translation>
            <numerusform>{found} von 1 Stück</numerusform>
            <numerusform>{found} von {n} Stücken</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>{text}, the first {shown} listed</source>
        <translation>{text}, die ersten {shown} aufgeführt</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>&amp;Add a folder…</source>
        <translation>&amp;Ordner hinzufügen…</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>Look for what is &amp;new</source>
        <translation>Nach &amp;Neuem suchen</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>&amp;Learn a style from these tunes…</source>
        <translation>Stil aus diesen Stücken &amp;lernen…</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>&amp;Take it off the shelf</source>
        <translation>Aus dem Regal &amp;nehmen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} new</source>
        <extracomment>one: 1 new</extracomment>
        <translation>
            <numerusform>1 neu</numerusform>
            <numerusform>{n} neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} changed</source>
        <extracomment>one: 1 changed</extracomment>
        <translation>
            <numerusform>1 geändert</numerusform>
            <numerusform>{n} geändert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} moved</source>
        <extracomment>one: 1 moved</extracomment>
        <translation>
            <numerusform>1 verschoben</numerusform>
            <numerusform>{n} verschoben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} back again</source>
        <extracomment>one: 1 back again</extracomment>
        <translation>
            <numerusform>1 wieder da</numerusform>
            <numerusform>{n} wieder da</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} gone</source>
        <extracomment>one: 1 gone</extracomment>
        <translation>
            <numerusform>1 fort</numerusform>
            <numerusform>{n} fort</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>{n} cannot be read</source>
        <extracomment>one: 1 cannot be read</extracomment>
        <translation>
            <numerusform>1 nicht lesbar</numerusform>
            <numerusform>{n} nicht lesbar</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_pane.py"/>
        <source>nothing new</source>
        <translation>nichts Neues</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>Left off looking through {n} files: {what}.</source>
        <extracomment>one: Left off looking through 1 file: {what}.</extracomment>
        <translation>
            <numerusform>Durchsehen abgebrochen nach 1 Datei: {what}.</numerusform>
            <numerusform>Durchsehen abgebrochen nach {n} Dateien: {what}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/shelf_pane.py"/>
        <source>Looked through {n} files: {what}.</source>
        <extracomment>one: Looked through 1 file: {what}.</extracomment>
        <translation>
            <numerusform>1 Datei durchgesehen: {what}.</numerusform>
            <numerusform>{n} Dateien durchgesehen: {what}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/shelf_table.py"/>
        <source>Tunes on the shelf</source>
        <translation>Stücke im Regal</translation>
    </message>
    <message>
        <location filename="../../app/shelf_table.py"/>
        <source>&amp;Status</source>
        <translation>&amp;Stand</translation>
    </message>
    <message>
        <location filename="../../app/shelf_table.py"/>
        <source>&amp;Tags…</source>
        <translation>Schlag&amp;wörter…</translation>
    </message>
    <message>
        <location filename="../../app/shelf_table.py"/>
        <source>Order &amp;by</source>
        <translation>O&amp;rdnen nach</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Open a tune and its bow check stands here.</source>
        <translation>Ein Stück öffnen, dann steht hier seine Strichprüfung.</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>The bow is being checked …</source>
        <translation>Der Strich wird geprüft …</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Nothing found: the marks and slurs of this bowing agree, and what comes back is bowed as before.</source>
        <translation>Nichts gefunden: Zeichen und Bindebögen dieser Strichfassung passen zusammen, und was wiederkommt, wird gestrichen wie zuvor.</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Nothing found by the rules that are told in this lesson.</source>
        <translation>Nichts gefunden mit den Regeln, die in dieser Lektion gemeldet werden.</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Choose a finding first.</source>
        <translation>Zuerst einen Befund auswählen.</translation>
    </message>
    <message>
        <location filename="../../app/side_list.py"/>
        <source>Accents: {plan}</source>
        <translation>Betonungen: {plan}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/side_list.py"/>
        <source>{bars} have accents of their own. A choice here is for the whole tune.</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} has accents of its own. A choice here is for the whole tune.</extracomment>
        <translation>
            <numerusform>{bars} hat eigene Betonungen. Eine Wahl hier gilt für das ganze Stück.</numerusform>
            <numerusform>{bars} haben eigene Betonungen. Eine Wahl hier gilt für das ganze Stück.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/side_tabs.py"/>
        <source>Panes beside the page</source>
        <translation>Felder neben dem Blatt</translation>
    </message>
    <message>
        <location filename="../../app/side_tabs.py"/>
        <source>Close {pane}</source>
        <translation>{pane} schließen</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>write a tune as it is bowed to a sound file</source>
        <translation>ein Stück mit seinen Strichen in eine Klangdatei schreiben</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>play the tunes one after the other; each FILE is then {form}</source>
        <translation>die Stücke nacheinander spielen; jede FILE ist dann {form}</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>.wav, .flac, .ogg, .mp3 or .mid</source>
        <translation>.wav, .flac, .ogg, .mp3 oder .mid</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>this bowing; the first if left out</source>
        <translation>diese Strichfassung; ohne Angabe die erste</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>in beats of the dance (a reel&apos;s: half notes)</source>
        <translation>in Schlägen des Tanzes (beim Reel: Halbe)</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>chords, or a drone</source>
        <translation>Akkorde oder ein Bordun</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>a click on each beat</source>
        <translation>ein Klick auf jedem Schlag</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>bars; 1 if left out</source>
        <translation>Takte; ohne Angabe 1</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>these bars only, by their printed numbers</source>
        <translation>nur diese Takte, nach ihren gedruckten Nummern</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>so often in a row</source>
        <translation>so oft nacheinander</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>faster and faster, in percent of the tempo: 60-100/5x2 plays 60, 60, 65 ...</source>
        <translation>immer schneller, in Prozent des Tempos: 60-100/5x2 spielt 60, 60, 65 ...</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>a file for each rung of the ladder: OUT-060.ogg ...</source>
        <translation>eine Datei für jede Sprosse der Leiter: OUT-060.ogg ...</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>{file}: expected a name that ends in {suffixes}</source>
        <translation>{file}: erwartet wird ein Name, der auf {suffixes} endet</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>One FILE is expected; with --set several are played one after the other</source>
        <translation>Es wird eine FILE erwartet; mit --set werden mehrere nacheinander gespielt</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>--apart needs --ladder</source>
        <translation>--apart braucht --ladder</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>{file}: bars {first}-{last} are not among {least}-{most}</source>
        <translation>{file}: Takt {first}-{last} liegt nicht in {least}-{most}</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>--{option} is for one tune, not for a set</source>
        <translation>--{option} gilt für ein Stück, nicht für ein Set</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>“{text}” is not a number from {least} to {most}</source>
        <translation>„{text}“ ist keine Zahl von {least} bis {most}</translation>
    </message>
    <message>
        <location filename="../../app/sound_command.py"/>
        <source>“{text}” names no bars: expected FROM-TO, such as 5-8</source>
        <translation>„{text}“ nennt keine Takte: erwartet wird VON-BIS wie 5-8</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>Style in which the bowing is carried on</source>
        <translation>Stil, in dem die Strichfassung fortgeführt wird</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>Whose hand the bowing is carried on in; styles of your own are learned on the shelf</source>
        <translation>In wessen Hand die Strichfassung fortgeführt wird; eigene Stile lernt das Regal</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>Carry on t&amp;his bowing</source>
        <translation>Fassung &amp;fortführen</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>Propose the rest from the bars that are slurred or marked, or selected</source>
        <translation>Den Rest aus den gebundenen, bezeichneten oder ausgewählten Takten vorschlagen</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>&amp;What the style does…</source>
        <translation>Was der Stil t&amp;ut…</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>Read what was found in its lessons</source>
        <translation>Lesen, was in seinen Lektionen gefunden wurde</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>S&amp;tyle</source>
        <translation>Sti&amp;l</translation>
    </message>
    <message>
        <location filename="../../app/style_chooser.py"/>
        <source>From this tune only</source>
        <translation>Nur aus diesem Stück</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>What was found in the lessons of the style</source>
        <translation>Was in den Lektionen des Stils gefunden wurde</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>The style “{name}”</source>
        <translation>Der Stil „{name}“</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>&amp;Take it away…</source>
        <translation>Ent&amp;fernen…</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>Forget this style; the lessons that it was learned from stay</source>
        <translation>Diesen Stil vergessen; die Lektionen, aus denen er gelernt wurde, bleiben</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>What was learned goes for good; the lessons stay, and it can be learned from them again.</source>
        <translation>Das Gelernte verschwindet endgültig; die Lektionen bleiben, und es lässt sich wieder daraus lernen.</translation>
    </message>
    <message>
        <location filename="../../app/style_dialog.py"/>
        <source>&amp;Take it away for good</source>
        <translation>Endgültig ent&amp;fernen</translation>
    </message>
    <message>
        <location filename="../../app/style_learning.py"/>
        <source>The style “{name}” is kept.</source>
        <translation>Der Stil „{name}“ ist behalten.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/style_learning.py"/>
        <source>{n} files cannot be read.</source>
        <extracomment>one: 1 file cannot be read.</extracomment>
        <translation>
            <numerusform>1 Datei ist nicht lesbar.</numerusform>
            <numerusform>{n} Dateien sind nicht lesbar.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/style_learning.py"/>
        <source>Reading {done} of {total} tunes …</source>
        <translation>{done} von {total} Stücken gelesen …</translation>
    </message>
    <message>
        <location filename="../../app/style_learning.py"/>
        <source>Learning …</source>
        <translation>Wird gelernt …</translation>
    </message>
    <message>
        <location filename="../../app/style_learning.py"/>
        <source>Keeping the style …</source>
        <translation>Der Stil wird behalten …</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/style_words.py"/>
        <source>Learned from {n} lessons: of {places} notes that could be slurred to the one before, {joined} are ({share}).</source>
        <extracomment>one: Learned from 1 lesson: of {places} notes that could be slurred to the one before, {joined} are ({share}).</extracomment>
        <translation>
            <numerusform>Aus 1 Lektion gelernt: Von {places} Noten, die an die vorige gebunden sein könnten, sind es {joined} ({share}).</numerusform>
            <numerusform>Aus {n} Lektionen gelernt: Von {places} Noten, die an die vorige gebunden sein könnten, sind es {joined} ({share}).</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/style_words.py"/>
        <source>Nothing is slurred much oftener than the rest.</source>
        <translation>Nichts ist viel öfter gebunden als der Rest.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>1883 book</source>
        <translation>Buch von 1883</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>“{name}” is no name for a style: letters or digits were expected.</source>
        <translation>„{name}“ ist kein Name für einen Stil: erwartet werden Buchstaben oder Ziffern.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>“{name}” comes with the program: choose another name.</source>
        <translation>„{name}“ gehört zum Programm: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>There is no style “{name}”: there are {styles}.</source>
        <translation>Es gibt keinen Stil „{name}“: Es gibt {styles}.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>The style “{name}” cannot be read: {why}.</source>
        <translation>Der Stil „{name}“ lässt sich nicht lesen: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>The style “{name}” cannot be kept: {why}.</source>
        <translation>Der Stil „{name}“ lässt sich nicht behalten: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>You have no style “{name}”.</source>
        <translation>Es gibt keinen eigenen Stil „{name}“.</translation>
    </message>
    <message>
        <location filename="../../app/styles.py"/>
        <source>The style “{name}” cannot be taken away: {why}.</source>
        <translation>Der Stil „{name}“ lässt sich nicht entfernen: {why}.</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>sure</source>
        <comment>of a bar</comment>
        <translation>sicher</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>likely</source>
        <comment>of a bar</comment>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>a guess</source>
        <comment>of a bar</comment>
        <translation>geraten</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>The style is sure of this bar: {chance}.</source>
        <translation>Der Stil ist sich dieses Taktes sicher: {chance}.</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>This bar is likely so, not sure: {chance}.</source>
        <translation>Dieser Takt ist wahrscheinlich so, nicht sicher: {chance}.</translation>
    </message>
    <message>
        <location filename="../../app/sureness.py"/>
        <source>This bar is a guess: {chance}.</source>
        <translation>Dieser Takt ist geraten: {chance}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sureness.py"/>
        <source>{n} bars {sure}</source>
        <extracomment>one: 1 bar {sure}</extracomment>
        <translation>
            <numerusform>1 Takt {sure}</numerusform>
            <numerusform>{n} Takte {sure}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/sureness.py"/>
        <source>{n} {sure}</source>
        <comment>n: bars</comment>
        <extracomment>one: 1 {sure}</extracomment>
        <translation>
            <numerusform>1 {sure}</numerusform>
            <numerusform>{n} {sure}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/tool_bar.py"/>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>{n} %</source>
        <translation>{n} %</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/totals_view.py"/>
        <source>strokes</source>
        <comment>under a figure</comment>
        <extracomment>one: stroke</extracomment>
        <translation>
            <numerusform>Strich</numerusform>
            <numerusform>Striche</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>{seconds} s</source>
        <translation>{seconds} s</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>longest</source>
        <comment>stroke; under a figure</comment>
        <translation>längster</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/totals_view.py"/>
        <source>slurs</source>
        <comment>under a figure</comment>
        <extracomment>one: slur</extracomment>
        <translation>
            <numerusform>Bogen</numerusform>
            <numerusform>Bögen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/totals_view.py"/>
        <source>retakes</source>
        <comment>under a figure</comment>
        <extracomment>one: retake</extracomment>
        <translation>
            <numerusform>Neuansatz</numerusform>
            <numerusform>Neuansätze</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>driven</source>
        <comment>accents; under a figure</comment>
        <translation>getrieben</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>on up-bow</source>
        <comment>accents; under a figure</comment>
        <translation>im Aufstrich</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>buried</source>
        <comment>accents; under a figure</comment>
        <translation>verdeckt</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>unstruck</source>
        <comment>accents; under a figure</comment>
        <translation>ohne Anstrich</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>consistent</source>
        <comment>under a figure</comment>
        <translation>einheitlich</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>comes round</source>
        <comment>under a figure</comment>
        <translation>geht auf</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>{strokes}, {slurs}, {retakes}; accents: {driven} driven, {up} on an up-bow, {buried} buried, {unstruck} unstruck; {consistency} consistent; comes round; longest stroke {seconds} seconds, {used} of bow {speed}.</source>
        <translation>{strokes}, {slurs}, {retakes}; Betonungen: {driven} getrieben, {up} im Aufstrich, {buried} verdeckt, {unstruck} nicht angestrichen; {consistency} einheitlich; geht rund auf; längster Strich {seconds} Sekunden, {used} Bogen {speed}.</translation>
    </message>
    <message>
        <location filename="../../app/totals_view.py"/>
        <source>{strokes}, {slurs}, {retakes}; accents: {driven} driven, {up} on an up-bow, {buried} buried, {unstruck} unstruck; {consistency} consistent; does not come round; longest stroke {seconds} seconds, {used} of bow {speed}.</source>
        <translation>{strokes}, {slurs}, {retakes}; Betonungen: {driven} getrieben, {up} im Aufstrich, {buried} verdeckt, {unstruck} nicht angestrichen; {consistency} einheitlich; geht nicht rund auf; längster Strich {seconds} Sekunden, {used} Bogen {speed}.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>The tune</source>
        <translation>Das Stück</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>This is a lesson to try things on. Click a note: it is slurred to the next, or the slur is parted. Click a bow mark: the stroke turns round, and every later one with it. Whatever you do can be undone with Ctrl+Z.</source>
        <translation>Das ist eine Lektion zum Ausprobieren. Eine Note anklicken: Sie wird an die nächste gebunden, oder der Bindebogen wird getrennt. Ein Strichzeichen anklicken: Der Strich dreht sich um und jeder spätere mit ihm. Alles lässt sich mit Strg+Z zurücknehmen.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>Its bowings</source>
        <translation>Seine Strichfassungen</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>One tune, several ways to bow it. Choose one and it is on the page; tick several and they stand under one another, with what tells them apart.</source>
        <translation>Ein Stück, mehrere Arten, es zu streichen. Eine auswählen, dann steht sie auf dem Blatt; mehrere ankreuzen, dann stehen sie untereinander mit ihren Unterschieden.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>What a player would trip over</source>
        <translation>Worüber man stolpern würde</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>The bow check reads along while you work. Choose a line: its notes are marked on the page, it says why it matters, and offers what mends it.</source>
        <translation>Die Strichprüfung liest beim Arbeiten mit. Eine Zeile auswählen: Ihre Noten werden auf dem Blatt markiert, der Grund steht da, und eine Abhilfe wird angeboten.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>A bowing worked out</source>
        <translation>Eine ausgearbeitete Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>Choose which beats to drive, press F9, and the best bowing for them is shown on the page. It is a preview: Enter takes it, Esc drops it.</source>
        <translation>Die zu treibenden Schläge wählen und F9 drücken: Die beste Strichfassung dafür steht auf dem Blatt. Es ist eine Vorschau: Eingabe übernimmt, Esc verwirft sie.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>How it sounds</source>
        <translation>Wie es klingt</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>F5 plays the tune as it is bowed, from the marked note on. Go round and round a few bars, or let it grow faster step by step. Rest often, and stop where anything hurts.</source>
        <translation>F5 spielt das Stück mit seinen Strichen ab der markierten Note. Einige Takte immer wieder spielen oder das Tempo Schritt für Schritt steigern. Oft ausruhen und aufhören, wenn etwas schmerzt.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>Print a sheet for yourself or for a class. Ctrl+Shift+P shows its pages beside all that you can choose.</source>
        <translation>Ein Blatt für sich selbst oder für eine Klasse drucken. Strg+Umschalt+P zeigt die Seiten neben allem, was sich wählen lässt.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>Whenever you want to know more</source>
        <translation>Um mehr zu erfahren</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>Help has the manual, with pictures, all keys, and this tour. Shift+F1 and a click tell what anything in the window is. Your own tunes: File &gt; Open, or drop a file on the window.</source>
        <translation>Unter „Hilfe“ stehen das Handbuch mit Bildern, alle Tasten und dieser Rundgang. Umschalt+F1 und ein Klick sagen, was etwas im Fenster ist. Eigene Stücke: Datei &gt; Öffnen oder eine Datei auf das Fenster ziehen.</translation>
    </message>
    <message>
        <location filename="../../app/tour.py"/>
        <source>{n} of {all}</source>
        <translation>{n} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/tour_balloon.py"/>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <location filename="../../app/tour_balloon.py"/>
        <source>&amp;Done</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <location filename="../../app/tour_balloon.py"/>
        <source>&amp;Leave the tour</source>
        <translation>Rundgang &amp;verlassen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../app/tune_choice.py"/>
        <source>{file}: of {n} tunes the first was taken, “{title}”; --tune chooses another</source>
        <extracomment>one: {file}: of 1 tune the first was taken, “{title}”; --tune chooses another</extracomment>
        <translation>
            <numerusform>{file}: Von 1 Stück wurde das erste genommen, „{title}“; --tune wählt ein anderes</numerusform>
            <numerusform>{file}: Von {n} Stücken wurde das erste genommen, „{title}“; --tune wählt ein anderes</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../app/tune_chooser.py"/>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <location filename="../../app/tune_chooser.py"/>
        <source>Choose a tune of {name}</source>
        <translation>Ein Stück aus {name} auswählen</translation>
    </message>
    <message>
        <location filename="../../app/tune_chooser.py"/>
        <source>Find by title, dance, key or number</source>
        <translation>Nach Titel, Tanz, Tonart oder Nummer suchen</translation>
    </message>
    <message>
        <location filename="../../app/tune_chooser.py"/>
        <source>Find a tune</source>
        <translation>Stück finden</translation>
    </message>
    <message>
        <location filename="../../app/tune_chooser.py"/>
        <source>Tunes</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <location filename="../../app/undo_desk.py"/>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <location filename="../../app/undo_desk.py"/>
        <source>{command} “{edit}”</source>
        <comment>undo or redo</comment>
        <translation>{command}: {edit}</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>What shall we bow?</source>
        <translation>Was soll gestrichen werden?</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>Open a lesson, a score or a tune book, drop one here, or paste a tune as ABC text.</source>
        <translation>Eine Lektion, Partitur oder Sammlung öffnen, hierher ziehen oder ein Stück als ABC-Text einfügen.</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>Paste a tune</source>
        <translation>Stück einfügen</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>Opened lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/welcome.py"/>
        <source>Tunes to try</source>
        <translation>Stücke zum Probieren</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>The tune, bowed. Click a note to slur it to the next or to separate the two; drag over notes to put them in one bow. Click a bow mark to turn the stroke round: dark marks are fixed by you, lighter ones follow from the strokes before. Under the staff stands how each accent is met. The right button tells all that can be done.</source>
        <translation>Das Stück mit seinen Strichen. Eine Note anklicken, um sie an die nächste zu binden oder beide zu trennen; über Noten ziehen, um sie auf einen Strich zu nehmen. Ein Strichzeichen anklicken, um den Strich umzudrehen: Dunkle Zeichen sind festgelegt, hellere folgen aus den Strichen davor. Unter der Notenzeile steht, wie jede Betonung getroffen wird. Die rechte Taste zeigt alles, was möglich ist.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Ways to open a tune: a file, text that was copied, one of the tunes that come with the program, or what you opened lately.</source>
        <translation>Wege, ein Stück zu öffnen: eine Datei, kopierter Text, eines der mitgelieferten Stücke oder zuletzt Geöffnetes.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What there is to know of the file that was opened or saved.</source>
        <translation>Was es zu der geöffneten oder gespeicherten Datei zu wissen gibt.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>The bowings of this tune. Choose one to work on it; tick several to see them under one another.</source>
        <translation>Die Strichfassungen dieses Stücks. Eine auswählen, um sie zu bearbeiten; mehrere ankreuzen, um sie untereinander zu sehen.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What a player would trip over in this bowing: totals, the accents that it should drive, and what was found. Choose a finding to see its notes, why it matters and what mends it; the right button turns its rule down.</source>
        <translation>Worüber man in dieser Strichfassung stolpern würde: Zahlen, die zu treibenden Betonungen und die Befunde. Einen Befund auswählen, um seine Noten, den Grund und die Abhilfe zu sehen; die rechte Taste stellt seine Regel leiser.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Has a bowing worked out. Choose the accents to drive and how much to slur: the best bowing is shown on the page before anything is changed. Enter on the page takes it, Esc drops it.</source>
        <translation>Lässt eine Strichfassung ausarbeiten. Betonungen und Menge der Bindebögen wählen: Die beste Strichfassung steht auf dem Blatt, bevor etwas geändert wird. Eingabe auf dem Blatt übernimmt, Esc verwirft sie.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which pane stands beside the page.</source>
        <translation>Welches Feld neben dem Blatt steht.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>A bowing that was worked out is shown, and nothing is edited yet: take it or drop it.</source>
        <translation>Eine ausgearbeitete Strichfassung wird gezeigt, noch ist nichts geändert: übernehmen oder verwerfen.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Where on its hair the bow is, from frog (below) to tip, as the tune goes on at an even speed. A triangle stands where it would leave the hair, a full one where no ordinary speed could keep it on. Click to go to a note.</source>
        <translation>Wo auf seinem Bezug der Bogen ist, vom Frosch (unten) bis zur Spitze, bei gleichmäßiger Geschwindigkeit. Ein Dreieck steht, wo er den Bezug verließe, ein volles, wo keine gewöhnliche Geschwindigkeit ihn darauf hielte. Klicken führt zu einer Note.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What is played, how fast, and where the bow is. The three dots say from where to where the speed climbs; Levels turns parts up, down or off.</source>
        <translation>Was gespielt wird, wie schnell und wo der Bogen ist. Die drei Punkte sagen, von wo bis wo das Tempo steigt; „Pegel“ stellt Stimmen lauter, leiser oder aus.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>A catalogue of your lessons and tune books. Type words or first notes to find a tune, Enter opens it. Your files are read, never changed.</source>
        <translation>Ein Katalog der eigenen Lektionen und Sammlungen. Wörter oder Anfangsnoten eingeben, um ein Stück zu finden, Eingabe öffnet es. Dateien werden gelesen, nie geändert.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What is needed most; everything else is in the menus.</source>
        <translation>Was am häufigsten gebraucht wird; alles andere steht in den Menüs.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What the pointer would do, or what was just done; at the right how large the page is.</source>
        <translation>Was der Zeiger bewirken würde oder was gerade getan wurde; rechts die Größe des Blatts.</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Open, save, print and export lessons</source>
        <translation>Lektionen öffnen, speichern, drucken und exportieren</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Lessons and books that were open lately</source>
        <translation>Zuletzt geöffnete Lektionen und Sammlungen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Take back what was done, and open copied tunes</source>
        <translation>Änderungen zurücknehmen und kopierte Stücke öffnen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What can be done with the marked note, or the selected ones</source>
        <translation>Was mit der markierten Note oder den ausgewählten möglich ist</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Cuts, rolls, turns and bowed triplets of this bowing</source>
        <translation>Cuts, Rolls, Doppelschläge und gestrichene Triolen dieser Strichfassung</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which places of the bar are driven, from here on</source>
        <translation>Welche Stellen des Taktes von hier an getrieben werden</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which places of this bar are driven</source>
        <translation>Welche Stellen dieses Taktes getrieben werden</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which places of this phrase are driven</source>
        <translation>Welche Stellen dieser Phrase getrieben werden</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which places of this part are driven</source>
        <translation>Welche Stellen dieses Teils getrieben werden</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which places of the whole tune are driven</source>
        <translation>Welche Stellen des ganzen Stücks getrieben werden</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Add, copy, name and compare bowings of the tune</source>
        <translation>Strichfassungen des Stücks hinzufügen, kopieren, benennen und vergleichen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Choose which bowings stand under this one</source>
        <translation>Auswählen, welche Strichfassungen unter dieser stehen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Have bowings worked out for the accents</source>
        <translation>Strichfassungen für die Betonungen ausarbeiten lassen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Hear the tune as it is bowed</source>
        <translation>Das Stück hören, wie es gestrichen wird</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What is heard: fiddle, backing, click, count-in</source>
        <translation>Was zu hören ist: Geige, Begleitung, Klick, Einzähler</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Go through what was found, and set what is told</source>
        <translation>Die Befunde durchgehen und einstellen, was gemeldet wird</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>What is shown, how large and in which colours</source>
        <translation>Was gezeigt wird, wie groß und in welchen Farben</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Which strokes carry a bow mark on the page</source>
        <translation>Welche Striche auf dem Blatt ein Strichzeichen tragen</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Light or dark</source>
        <translation>Hell oder dunkel</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>In which language the program speaks</source>
        <translation>In welcher Sprache das Programm spricht</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>The manual, all keys, the tour, and what the program is made of</source>
        <translation>Das Handbuch, alle Tasten, der Rundgang und woraus das Programm besteht</translation>
    </message>
    <message>
        <location filename="../../app/whats_this.py"/>
        <source>Show or hide: {part}</source>
        <translation>Zeigen oder verbergen: {part}</translation>
    </message>
    <message>
        <location filename="../../app/window_layout.py"/>
        <source>What the pointer would do</source>
        <translation>Was der Zeiger bewirken würde</translation>
    </message>
    <message>
        <location filename="../../core/accent_plan.py"/>
        <source>on the beat</source>
        <comment>accent plan</comment>
        <translation>auf dem Schlag</translation>
    </message>
    <message>
        <location filename="../../core/accent_plan.py"/>
        <source>backbeat</source>
        <comment>accent plan</comment>
        <translation>Backbeat</translation>
    </message>
    <message>
        <location filename="../../core/accent_plan.py"/>
        <source>by phrase</source>
        <comment>accent plan</comment>
        <translation>phrasenweise</translation>
    </message>
    <message>
        <location filename="../../core/accent_plan.py"/>
        <source>none</source>
        <comment>accent plan</comment>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../core/accent_plan.py"/>
        <source>“{text}” is no accent plan: expected on-beat, backbeat, by-phrase, none, or places in quarter notes from the start of the bar such as 0,2</source>
        <translation>„{text}“ ist kein Betonungsplan: erwartet wird on-beat, backbeat, by-phrase, none oder Stellen in Vierteln vom Taktanfang an wie 0,2</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A rest has no stroke to join.</source>
        <translation>Eine Pause hat keinen Strich, der sich verbinden lässt.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>This is the last note: there is no note after it to join.</source>
        <translation>Das ist die letzte Note: Danach kommt keine, mit der sie sich verbinden lässt.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A slur cannot run over a rest.</source>
        <translation>Ein Bindebogen kann nicht über eine Pause gehen.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>One note alone makes no slur: choose two or more.</source>
        <translation>Eine Note allein ergibt keinen Bindebogen: zwei oder mehr auswählen.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A rest has no bow direction.</source>
        <translation>Eine Pause hat keine Strichrichtung.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A rest has no stroke to retake.</source>
        <translation>Eine Pause hat keinen Strich, der sich neu ansetzen lässt.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>The first stroke has none before it to retake.</source>
        <translation>Vor dem ersten Strich steht keiner, nach dem neu angesetzt werden könnte.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A rest comes next: a slur cannot run over a rest.</source>
        <translation>Danach kommt eine Pause: Ein Bindebogen kann nicht über eine Pause gehen.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>The first note has none before it to join.</source>
        <translation>Vor der ersten Note steht keine, mit der sie sich verbinden lässt.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A rest comes before: a slur cannot run over a rest.</source>
        <translation>Davor steht eine Pause: Ein Bindebogen kann nicht über eine Pause gehen.</translation>
    </message>
    <message>
        <location filename="../../core/bowing.py"/>
        <source>A held note is part of its stroke already.</source>
        <translation>Eine gehaltene Note gehört schon zu ihrem Strich.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Mark against a slur</source>
        <translation>Strichzeichen gegen den Bindebogen</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>All notes under one slur go one way (Gehrkens, Essentials in Conducting, 1919, on bowing): the slur or the mark must give way.</source>
        <translation>Alle Noten unter einem Bindebogen gehen in eine Richtung (Gehrkens, Essentials in Conducting, 1919, über Striche): Entweder der Bindebogen oder das Zeichen muss weichen.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Mark that says nothing new</source>
        <translation>Strichzeichen, das nichts Neues sagt</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The slur says the direction already, and a mark in the middle of it reads like a new stroke. Common practice, no source.</source>
        <translation>Die Richtung folgt schon aus dem Bindebogen, und ein Zeichen mittendrin liest sich wie ein neuer Strich. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <location filename="../../core/set_check.py"/>
        <source>Tune comes round on the other bow</source>
        <translation>Stück beginnt von vorn mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Dance tunes are played over and over: what was down the first time is up the second, and every accent with it. Common practice, no source.</source>
        <translation>Tanzstücke werden immer wieder von vorn gespielt: Was beim ersten Mal Abstrich war, ist beim zweiten Aufstrich, und mit ihm jede Betonung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <location filename="../../core/set_check.py"/>
        <source>Tune comes round by a retake</source>
        <translation>Stück beginnt von vorn mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>It comes round as it began, because the bow is lifted: know that before you start again. Common practice, no source.</source>
        <translation>Es beginnt wieder wie zuvor, weil der Bogen abgehoben wird: gut zu wissen, bevor es von vorn losgeht. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Part comes round on the other bow</source>
        <translation>Teil beginnt beim Wiederholen mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Strokes alternate on through the repeat, and an odd number of them turns the part round: one slur more or less puts it right. Common practice, no source.</source>
        <translation>Die Striche wechseln über die Wiederholung hinweg weiter, und eine ungerade Zahl davon dreht den Teil um: Ein Bindebogen mehr oder weniger bringt es in Ordnung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Ending begins on the other bow</source>
        <translation>Klammer beginnt mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The endings stand in one place of the tune, and the hand expects one bow there. Common practice, no source.</source>
        <translation>Die Klammern stehen an einer Stelle des Stücks, und die Hand erwartet dort einen bestimmten Strich. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Phrase comes again on the other bow</source>
        <translation>Phrase kommt mit dem anderen Strich wieder</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The same notes are learned once where the bow does the same each time. Common practice, no source.</source>
        <translation>Dieselben Noten sind nur einmal zu lernen, wenn der Bogen jedes Mal dasselbe tut. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Phrase comes again slurred differently</source>
        <translation>Phrase kommt anders gebunden wieder</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The same notes have other slurs here: a variation, or an oversight? Common practice, no source.</source>
        <translation>Dieselben Noten haben hier andere Bindebögen: Variante oder Versehen? Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Like phrase on the other bow</source>
        <translation>Ähnliche Phrase mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>What is built alike is easier to learn bowed alike; no more than a suggestion. Common practice, no source.</source>
        <translation>Was ähnlich gebaut ist, lernt sich mit denselben Strichen leichter; nicht mehr als eine Anregung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Like phrase slurred differently</source>
        <translation>Ähnliche Phrase anders gebunden</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>What is built alike is easier to learn slurred alike; no more than a suggestion. Common practice, no source.</source>
        <translation>Was ähnlich gebaut ist, lernt sich mit denselben Bindebögen leichter; nicht mehr als eine Anregung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent on an up-bow</source>
        <translation>Betonung im Aufstrich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The strong beats (L. Mozart, Violinschule, 1756, XII §9) are taken down (the same, IV §3, from memory; Schroeder, Handbook of Violin Playing, about 1889). Backbeat: common practice, no source.</source>
        <translation>Die guten Taktteile (L. Mozart, Violinschule, 1756, XII §9) werden im Abstrich genommen (ebenda, IV §3, aus dem Gedächtnis; Schroeder, Handbook of Violin Playing, um 1889). Backbeat: allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent inside a slur</source>
        <translation>Betonung unter einem Bindebogen</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Of notes under one slur the first is louder and the rest fade (L. Mozart, Violinschule, 1756, XII §10): an accent inside is not heard as one.</source>
        <translation>Von den Noten unter einem Bindebogen ist die erste lauter, die übrigen werden leiser (L. Mozart, Violinschule, 1756, XII §10): Eine Betonung mittendrin ist nicht als solche zu hören.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent where nothing is struck</source>
        <translation>Betonung, wo nichts angestrichen wird</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The plan accents a place where the bow strikes nothing: the tune rests there or holds a note. Common practice, no source.</source>
        <translation>Der Plan betont eine Stelle, an der der Bogen nichts anstreicht: Dort steht eine Pause oder eine gehaltene Note. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accents phrase by phrase</source>
        <translation>Betonungen Phrase für Phrase</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Each phrase of four bars counts as accented on the beat or on the backbeat, whichever more down-bows meet. Common practice, no source.</source>
        <translation>Jede Phrase von vier Takten gilt als auf dem Schlag oder auf dem Backbeat betont, je nachdem, was mehr Abstriche treffen. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Retake on some passes only</source>
        <translation>Neuansatz nur in einigen Durchgängen</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Inside a phrase the bow has to be lifted one time through and not another, which is hard to remember in a dance. Common practice, no source.</source>
        <translation>Mitten in einer Phrase muss der Bogen in einem Durchgang abgehoben werden und in einem anderen nicht, was sich beim Tanzspiel schwer merken lässt. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Retake</source>
        <translation>Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The bow is lifted to go the same way again: told, never forbidden. Two down-bows in a row by retaking: Muffat, Florilegium Secundum (1698), preface.</source>
        <translation>Der Bogen wird abgehoben, um noch einmal in dieselbe Richtung zu gehen: ein Hinweis, kein Verbot. Zwei Abstriche nacheinander durch Neuansetzen: Muffat, Florilegium Secundum (1698), Vorrede.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Slur over two equal notes</source>
        <translation>Bindebogen über zwei gleichen Noten</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Under a slur no bow parts two equal notes, and they sound as one long note. A hook parts them, and so does a cut: common practice, no source.</source>
        <translation>Unter einem Bindebogen trennt kein Strich zwei gleiche Noten, und sie klingen wie eine lange. Anhängen trennt sie, ebenso ein Cut: allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Long stroke</source>
        <translation>Langer Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>More than eight notes, or a bar and a half, on one bow leave little bow for each. Common practice, no source.</source>
        <translation>Mehr als acht Noten oder anderthalb Takte auf einem Strich lassen für jede Note wenig Bogen. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Stroke too long for the bow</source>
        <translation>Strich zu lang für den Bogen</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>About 65 cm of hair (instrument handbooks, from memory) at about 5 cm/s, the slowest bow speed of ordinary playing (Askenfelt, JASA 80, 1986, 1007, from memory).</source>
        <translation>Etwa 65 cm Bezug (Instrumentenhandbücher, aus dem Gedächtnis) bei etwa 5 cm/s, der langsamsten Bogengeschwindigkeit gewöhnlichen Spiels (Askenfelt, JASA 80, 1986, 1007, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Bow runs out</source>
        <translation>Bogen geht zu Ende</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Down-bows go from nut to point, up-bows from point to nut (Gehrkens, Essentials in Conducting, 1919, on bowing); bow speeds roughly 5 to 100 cm/s (Askenfelt, JASA 80, 1986, 1007, from memory).</source>
        <translation>Abstriche gehen vom Frosch zur Spitze, Aufstriche von der Spitze zum Frosch (Gehrkens, Essentials in Conducting, 1919, über Striche); Bogengeschwindigkeiten etwa 5 bis 100 cm/s (Askenfelt, JASA 80, 1986, 1007, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Bow drifts to one end</source>
        <translation>Bogen wandert zu einem Ende</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Saunders, Self-Instructing School for the Violin (1847), pp. 16–17: a single note needs as much bow as the three slurred before it, else the bow runs out. Told beyond that.</source>
        <translation>Saunders, Self-Instructing School for the Violin (1847), S. 16–17: Eine einzelne Note braucht so viel Bogen wie die drei gebundenen vor ihr, sonst geht der Bogen zu Ende. Gemeldet wird, was darüber hinausgeht.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Slur leaps over a string</source>
        <translation>Bindebogen springt über eine Saite</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The bow touches neighbouring strings only without being lifted; common practice, no source.</source>
        <translation>Ohne abzuheben erreicht der Bogen nur benachbarte Saiten; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} is not struck: a rest stands there</source>
        <translation>{where} wird die Betonung auf {beat} nicht angestrichen: Dort steht eine Pause</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} is not struck: a held note stands there</source>
        <translation>{where} wird die Betonung auf {beat} nicht angestrichen: Dort steht eine gehaltene Note</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} is not struck: a note sounds on there</source>
        <translation>{where} wird die Betonung auf {beat} nicht angestrichen: Dort klingt eine Note weiter</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>on the beat in {bars}</source>
        <translation>auf dem Schlag in {bars}</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>on the backbeat in {bars}</source>
        <translation>auf dem Backbeat in {bars}</translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} falls on an up-bow</source>
        <translation>{where} fällt die Betonung auf {beat} auf einen Aufstrich</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, {n} accents fall on up-bows</source>
        <extracomment>one: {where}, 1 accent falls on an up-bow</extracomment>
        <translation>
            <numerusform>{where} fällt eine Betonung auf einen Aufstrich</numerusform>
            <numerusform>{where} fallen {n} Betonungen auf Aufstriche</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} is buried inside a slur</source>
        <translation>{where} ist die Betonung auf {beat} unter einem Bindebogen verdeckt</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, {n} accents are buried inside slurs</source>
        <extracomment>one: {where}, 1 accent is buried inside a slur</extracomment>
        <translation>
            <numerusform>{where} ist eine Betonung unter einem Bindebogen verdeckt</numerusform>
            <numerusform>{where} sind {n} Betonungen unter Bindebögen verdeckt</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, the accent on {beat} is not struck ({reasons})</source>
        <translation>{where} wird die Betonung auf {beat} nicht angestrichen ({reasons})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{where}, {n} accents are not struck ({reasons})</source>
        <extracomment>one: {where}, 1 accent is not struck ({reasons})</extracomment>
        <translation>
            <numerusform>{where} wird eine Betonung nicht angestrichen ({reasons})</numerusform>
            <numerusform>{where} werden {n} Betonungen nicht angestrichen ({reasons})</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/emphasis.py"/>
        <source>phrase by phrase, the accents lie {places}</source>
        <translation>Phrase für Phrase liegen die Betonungen {places}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{n} rests</source>
        <extracomment>one: 1 rest</extracomment>
        <translation>
            <numerusform>1 Pause</numerusform>
            <numerusform>{n} Pausen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{n} held notes</source>
        <extracomment>one: 1 held note</extracomment>
        <translation>
            <numerusform>1 gehaltene Note</numerusform>
            <numerusform>{n} gehaltene Noten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/emphasis.py"/>
        <source>{n} notes that sound on</source>
        <extracomment>one: 1 note that sounds on</extracomment>
        <translation>
            <numerusform>1 weiterklingende Note</numerusform>
            <numerusform>{n} weiterklingende Noten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/finding.py"/>
        <source>{edit} · {n} slurs more</source>
        <extracomment>one: {edit} · 1 slur more</extracomment>
        <translation>
            <numerusform>{edit} · 1 Bindebogen mehr</numerusform>
            <numerusform>{edit} · {n} Bindebögen mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/finding.py"/>
        <source>{edit} · {n} slurs fewer</source>
        <extracomment>one: {edit} · 1 slur fewer</extracomment>
        <translation>
            <numerusform>{edit} · 1 Bindebogen weniger</numerusform>
            <numerusform>{edit} · {n} Bindebögen weniger</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/marks.py"/>
        <source>in {bar}, {note} is marked {direction} inside {bow}{passes}</source>
        <translation>in {bar} ist {note} als {direction} bezeichnet, liegt aber in einem {bow}{passes}</translation>
    </message>
    <message>
        <location filename="../../core/checks/marks.py"/>
        <source>in {bar}, {note} is marked {direction} inside {bow}, which says nothing new</source>
        <translation>in {bar} ist {note} als {direction} bezeichnet und liegt ohnehin in einem {bow}, was nichts Neues sagt</translation>
    </message>
    <message>
        <location filename="../../core/checks/marks.py"/>
        <source>Take the mark away</source>
        <translation>Zeichen wegnehmen</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>eighth</source>
        <comment>beat of a tempo</comment>
        <translation>Achtel</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>dotted eighth</source>
        <comment>beat of a tempo</comment>
        <translation>punktierte Achtel</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>quarter</source>
        <comment>beat of a tempo</comment>
        <translation>Viertel</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>dotted quarter</source>
        <comment>beat of a tempo</comment>
        <translation>punktierte Viertel</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>half</source>
        <comment>beat of a tempo</comment>
        <translation>Halbe</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>dotted half</source>
        <comment>beat of a tempo</comment>
        <translation>punktierte Halbe</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>whole note</source>
        <comment>beat of a tempo</comment>
        <translation>Ganze</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>the stroke that begins with {note} lasts {seconds} seconds ({pace}): at {speed} cm/s, about as slow as a bow speaks, it needs more than {hair}</source>
        <translation>der Strich, der mit {note} beginnt, dauert {seconds} Sekunden ({pace}): Bei {speed} cm/s, etwa so langsam, wie ein Bogen noch anspricht, braucht er mehr als {hair}</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>{where}, the bow runs out at the {end}: {note} finds no room on {hair} at any bow speeds of {slowest} to {fastest} cm/s ({pace})</source>
        <translation>{where} geht der Bogen zu Ende ({end}): {note} hat auf {hair} bei keiner Bogengeschwindigkeit von {slowest} bis {fastest} cm/s Platz ({pace})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/reach.py"/>
        <source>{where}, the bow runs out at the {end}: {n} strokes find no room on {hair} at any bow speeds of {slowest} to {fastest} cm/s ({pace})</source>
        <extracomment>one: {where}, the bow runs out at the {end}: 1 stroke finds no room on {hair} at any bow speeds of {slowest} to {fastest} cm/s ({pace})</extracomment>
        <translation>
            <numerusform>{where} geht der Bogen zu Ende ({end}): Ein Strich hat auf {hair} bei keiner Bogengeschwindigkeit von {slowest} bis {fastest} cm/s Platz ({pace})</numerusform>
            <numerusform>{where} geht der Bogen zu Ende ({end}): {n} Striche haben auf {hair} bei keiner Bogengeschwindigkeit von {slowest} bis {fastest} cm/s Platz ({pace})</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>in {bars}, down-bows together last {times} times as long as up-bows: at one bow speed of {speed} cm/s ({pace}) the bow drifts to the tip and off {hair}</source>
        <translation>in {bars} dauern die Abstriche zusammen {times}-mal so lang wie die Aufstriche: Bei einer einzigen Bogengeschwindigkeit von {speed} cm/s ({pace}) wandert der Bogen zur Spitze und über {hair} hinaus</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>in {bars}, up-bows together last {times} times as long as down-bows: at one bow speed of {speed} cm/s ({pace}) the bow drifts to the frog and off {hair}</source>
        <translation>in {bars} dauern die Aufstriche zusammen {times}-mal so lang wie die Abstriche: Bei einer einzigen Bogengeschwindigkeit von {speed} cm/s ({pace}) wandert der Bogen zum Frosch und über {hair} hinaus</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>{length} cm of hair</source>
        <translation>{length} cm Bezug</translation>
    </message>
    <message>
        <location filename="../../core/checks/retakes.py"/>
        <source>the same way as the stroke before</source>
        <translation>in dieselbe Richtung wie der Strich davor</translation>
    </message>
    <message>
        <location filename="../../core/checks/retakes.py"/>
        <source>{direction} after {direction}</source>
        <translation>{direction} nach {direction}</translation>
    </message>
    <message>
        <location filename="../../core/checks/retakes.py"/>
        <source>{note} is a retake over a rest ({way}){passes}</source>
        <translation>{note} ist ein Neuansatz über einer Pause ({way}){passes}</translation>
    </message>
    <message>
        <location filename="../../core/checks/retakes.py"/>
        <source>{note} is a retake ({way}){passes}</source>
        <translation>{note} ist ein Neuansatz ({way}){passes}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/retakes.py"/>
        <source>{n} retakes over a rest</source>
        <extracomment>one: 1 retake over a rest</extracomment>
        <translation>
            <numerusform>1 Neuansatz über einer Pause</numerusform>
            <numerusform>{n} Neuansätze über Pausen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/retakes.py"/>
        <source>{bars} hold {retakes} ({way}){passes}</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} holds {retakes} ({way}){passes}</extracomment>
        <translation>
            <numerusform>{bars} enthält {retakes} ({way}){passes}</numerusform>
            <numerusform>{bars} enthalten {retakes} ({way}){passes}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>but for one note</source>
        <translation>bis auf eine Note</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>in rhythm, rises and falls</source>
        <translation>in Rhythmus, Auf und Ab</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a step higher</source>
        <translation>eine Stufe höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a third higher</source>
        <translation>eine Terz höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a fourth higher</source>
        <translation>eine Quarte höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a fifth higher</source>
        <translation>eine Quinte höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a sixth higher</source>
        <translation>eine Sexte höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a seventh higher</source>
        <translation>eine Septime höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>an octave higher</source>
        <translation>eine Oktave höher</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a step lower</source>
        <translation>eine Stufe tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a third lower</source>
        <translation>eine Terz tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a fourth lower</source>
        <translation>eine Quarte tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a fifth lower</source>
        <translation>eine Quinte tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a sixth lower</source>
        <translation>eine Sexte tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>a seventh lower</source>
        <translation>eine Septime tiefer</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>an octave lower</source>
        <translation>eine Oktave tiefer</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} bring {first} again{changed} on the other bow ({beginnings})</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} brings {first} again{changed} on the other bow ({beginnings})</extracomment>
        <translation>
            <numerusform>{bars} bringt {first}{changed} mit dem anderen Strich wieder ({beginnings})</numerusform>
            <numerusform>{bars} bringen {first}{changed} mit dem anderen Strich wieder ({beginnings})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} bring {first} again{changed} on the other bow, from {note} on (there {old} in {old_bar}, {new} in {new_bar})</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} brings {first} again{changed} on the other bow, from {note} on (there {old} in {old_bar}, {new} in {new_bar})</extracomment>
        <translation>
            <numerusform>{bars} bringt {first}{changed} ab {note} mit dem anderen Strich wieder (dort {old} in {old_bar}, {new} in {new_bar})</numerusform>
            <numerusform>{bars} bringen {first}{changed} ab {note} mit dem anderen Strich wieder (dort {old} in {old_bar}, {new} in {new_bar})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} bring {first} again{changed} slurred differently</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} brings {first} again{changed} slurred differently</extracomment>
        <translation>
            <numerusform>{bars} bringt {first}{changed} anders gebunden wieder</numerusform>
            <numerusform>{bars} bringen {first}{changed} anders gebunden wieder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} bring {first} again{changed} slurred differently ({beginnings})</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} brings {first} again{changed} slurred differently ({beginnings})</extracomment>
        <translation>
            <numerusform>{bars} bringt {first}{changed} anders gebunden wieder ({beginnings})</numerusform>
            <numerusform>{bars} bringen {first}{changed} anders gebunden wieder ({beginnings})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} are like {first}, {how}, and come on the other bow ({beginnings})</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} is like {first}, {how}, and comes on the other bow ({beginnings})</extracomment>
        <translation>
            <numerusform>{bars} gleicht {first}, {how}, und kommt mit dem anderen Strich ({beginnings})</numerusform>
            <numerusform>{bars} gleichen {first}, {how}, und kommen mit dem anderen Strich ({beginnings})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/returns.py"/>
        <source>{bars} are like {first}, {how}, and are slurred differently</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} is like {first}, {how}, and is slurred differently</extracomment>
        <translation>
            <numerusform>{bars} gleicht {first}, {how}, und ist anders gebunden</numerusform>
            <numerusform>{bars} gleichen {first}, {how}, und sind anders gebunden</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>, {bars} with one note changed,</source>
        <comment>inside a sentence</comment>
        <translation>, {bars} mit einer geänderten Note,</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>{old_bar} began {old}, {new_bar} begins {new}</source>
        <translation>{old_bar} begann mit {old}, {new_bar} beginnt mit {new}</translation>
    </message>
    <message>
        <location filename="../../core/checks/returns.py"/>
        <source>Take {note} {direction}</source>
        <translation>{note} als {direction} nehmen</translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <source>part {name} ({bars})</source>
        <translation>Teil {name} ({bars})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/rounds.py"/>
        <source>{bars} come round on the other bow {times} ({note} is {direction} the first time)</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} comes round on the other bow {times} ({note} is {direction} the first time)</extracomment>
        <translation>
            <numerusform>{bars} kommt {times} mit dem anderen Strich ({note} ist beim 1. Mal {direction})</numerusform>
            <numerusform>{bars} kommen {times} mit dem anderen Strich ({note} ist beim 1. Mal {direction})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/rounds.py"/>
        <source>{bars} come round on the other bow from {note} on {times} ({note} is {direction} the first time)</source>
        <comment>n: bars</comment>
        <extracomment>one: {bars} comes round on the other bow from {note} on {times} ({note} is {direction} the first time)</extracomment>
        <translation>
            <numerusform>{bars} kommt {times} ab {note} mit dem anderen Strich ({note} ist beim 1. Mal {direction})</numerusform>
            <numerusform>{bars} kommen {times} ab {note} mit dem anderen Strich ({note} ist beim 1. Mal {direction})</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <source>the {ordinal} ending ({bars}) begins {direction}, the first ({first}) {other}, for its part comes round on the other bow</source>
        <translation>die {ordinal} Klammer ({bars}) beginnt mit {direction}, die 1. ({first}) mit {other}, weil ihr Teil mit dem anderen Strich wiederkommt</translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <source>the {ordinal} ending ({bars}) begins {direction}, the first ({first}) {other}</source>
        <translation>die {ordinal} Klammer ({bars}) beginnt mit {direction}, die 1. ({first}) mit {other}</translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <source>played again from the start, the tune begins {direction} (the first time {other})</source>
        <translation>von vorn gespielt beginnt das Stück mit {direction} (beim ersten Mal mit {other})</translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <source>played again from the start, the tune takes a retake: it ends on {bow} and begins with another</source>
        <translation>von vorn gespielt braucht das Stück einen Neuansatz: Es endet mit {bow} und beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/checks/rounds.py"/>
        <location filename="../../core/set_remedies.py"/>
        <source>Take {note} {direction} every time</source>
        <translation>{note} jedes Mal als {direction} nehmen</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>the stroke that begins with {note} takes {notes}</source>
        <translation>der Strich, der mit {note} beginnt, fasst {notes}</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>the stroke that begins with {note} lasts longer than a bar and a half</source>
        <translation>der Strich, der mit {note} beginnt, dauert länger als anderthalb Takte</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>the stroke that begins with {note} takes {notes} and lasts longer than a bar and a half</source>
        <translation>der Strich, der mit {note} beginnt, fasst {notes} und dauert länger als anderthalb Takte</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>in {bar}, {note} is slurred to the same note before it ({pitch}) and is not heard</source>
        <translation>in {bar} ist {note} an dieselbe Note davor gebunden ({pitch}) und nicht zu hören</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>Put a cut on {note} ({cut})</source>
        <translation>Cut auf {note} setzen ({cut})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/slurs.py"/>
        <source>in {bars}, {n} notes are slurred to the same note before them and are not heard</source>
        <extracomment>one: in {bars}, 1 note is slurred to the same note before it and is not heard</extracomment>
        <translation>
            <numerusform>in {bars} ist eine Note an dieselbe Note davor gebunden und nicht zu hören</numerusform>
            <numerusform>in {bars} sind {n} Noten an dieselbe Note davor gebunden und nicht zu hören</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/slurs.py"/>
        <source>Put cuts on the {n} notes</source>
        <extracomment>one: Put a cut on the note</extracomment>
        <translation>
            <numerusform>Cut auf die Note setzen</numerusform>
            <numerusform>Cuts auf die {n} Noten setzen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>{pitch}, the open string above</source>
        <translation>{pitch}, die leere Saite darüber</translation>
    </message>
    <message>
        <location filename="../../core/checks/slurs.py"/>
        <source>{pitch}, the next note up</source>
        <translation>{pitch}, der nächste Ton darüber</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/slurs.py"/>
        <source>{n} notes</source>
        <extracomment>one: 1 note</extracomment>
        <translation>
            <numerusform>1 Note</numerusform>
            <numerusform>{n} Noten</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/strings.py"/>
        <source>in {bar}, the slur to {note} leaps {way}</source>
        <translation>in {bar} springt der Bindebogen zu {note} {way}</translation>
    </message>
    <message>
        <location filename="../../core/checks/strings.py"/>
        <source>Hook {note}: the bow stops before it</source>
        <translation>{note} anhängen: Der Bogen hält davor an</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/strings.py"/>
        <source>in {bars}, {n} slurs leap over a string (the first, {way})</source>
        <extracomment>one: in {bars}, 1 slur leaps over a string (the first, {way})</extracomment>
        <translation>
            <numerusform>in {bars} springt ein Bindebogen über eine Saite ({way})</numerusform>
            <numerusform>in {bars} springen {n} Bindebögen über eine Saite (der erste {way})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/checks/strings.py"/>
        <source>Hook the {n} notes: the bow stops before each</source>
        <extracomment>one: Hook the note: the bow stops before it</extracomment>
        <translation>
            <numerusform>Note anhängen: Der Bogen hält davor an</numerusform>
            <numerusform>Die {n} Noten anhängen: Der Bogen hält vor jeder an</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/checks/strings.py"/>
        <source>from the {start} string to the {end} string</source>
        <translation>von der {start}-Saite zur {end}-Saite</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>beat {number}</source>
        <translation>Schlag {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the second half of beat {number}</source>
        <translation>der zweiten Hälfte von Schlag {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the place after beat {number}</source>
        <translation>der Stelle nach Schlag {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>a down-bow</source>
        <translation>Abstrich</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>an up-bow</source>
        <translation>Aufstrich</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>down</source>
        <comment>direction of a stroke</comment>
        <translation>Abstrich</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>up</source>
        <comment>direction of a stroke</comment>
        <translation>Aufstrich</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the pick-up to bar {number}</source>
        <translation>Auftakt zu Takt {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>{first}–{last}</source>
        <comment>bars</comment>
        <translation>{first}–{last}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the {ordinal} note</source>
        <translation>{ordinal} Note</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the {ordinals} time</source>
        <comment>passes</comment>
        <translation>beim {ordinals} Mal</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>in {bars} {times}</source>
        <translation>in {bars} {times}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>in {bars}</source>
        <translation>in {bars}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>, {times}</source>
        <comment>behind a clause</comment>
        <translation>, {times}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>{note} of {bar}</source>
        <translation>{note} in {bar}</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Give every note a bow of its own, all of them equally long.</source>
        <translation>Jeder Note einen eigenen Strich geben, alle gleich lang.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Down on the beat</source>
        <translation>Abstrich auf dem Schlag</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Begin a down-bow on every beat that is accented, with as few slurs as it takes.</source>
        <translation>Auf jedem betonten Schlag einen Abstrich beginnen, mit so wenigen Bindebögen wie möglich.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Down on the backbeat</source>
        <translation>Abstrich auf dem Backbeat</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Begin a down-bow on every backbeat, with as few slurs as it takes.</source>
        <translation>Auf jedem Backbeat einen Abstrich beginnen, mit so wenigen Bindebögen wie möglich.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Long bows</source>
        <translation>Lange Striche</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Play two and three notes to a bow, and still begin a down-bow on every accented beat.</source>
        <translation>Zwei und drei Noten auf einen Strich spielen und trotzdem auf jedem betonten Schlag einen Abstrich beginnen.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>In pairs</source>
        <translation>Paarweise</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur the running notes two by two, each pair beginning with the beat.</source>
        <translation>Die laufenden Noten zu zweit binden, jedes Paar auf dem Schlag beginnend.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Pairs across the beat</source>
        <translation>Paare über den Schlag</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur the last note before each beat to the first note on it, and over the bar line.</source>
        <translation>Die letzte Note vor jedem Schlag an die erste auf dem Schlag binden, auch über den Taktstrich.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Three and one</source>
        <translation>Drei und eine</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur three running notes from the beat on and give what is left a bow of its own.</source>
        <translation>Vom Schlag an drei laufende Noten binden und dem Rest einen eigenen Strich geben.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>One and three</source>
        <translation>Eine und drei</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Give the note on the beat a bow of its own and slur those behind it.</source>
        <translation>Der Note auf dem Schlag einen eigenen Strich geben und die folgenden binden.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Threes over the bar line</source>
        <translation>Dreier über den Taktstrich</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur three notes over the bar line, so that the backbeat has the down-bow.</source>
        <translation>Drei Noten über den Taktstrich binden, damit der Backbeat den Abstrich bekommt.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>On the other bow</source>
        <translation>Mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Play the bowing that you know, but begin on the other bow: all down-bows are up-bows now.</source>
        <translation>Die bekannte Strichfassung spielen, aber mit dem anderen Strich beginnen: Alle Abstriche sind jetzt Aufstriche.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>“{title}” needs running notes of one length, and this tune has too few.</source>
        <translation>„{title}“ braucht laufende Noten gleicher Länge, und dieses Stück hat zu wenige.</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <location filename="../../core/planner/problem.py"/>
        <source>There is nothing to bow: the tune has no notes.</source>
        <translation>Es gibt nichts zu streichen: Das Stück hat keine Noten.</translation>
    </message>
    <message>
        <location filename="../../core/errors.py"/>
        <source>line {line}: {text}</source>
        <translation>Zeile {line}: {text}</translation>
    </message>
    <message>
        <location filename="../../core/exercise.py"/>
        <source>{task} Write slurs and bows in from bar {bar} on.</source>
        <translation>{task} Bindebögen und Striche ab Takt {bar} eintragen.</translation>
    </message>
    <message>
        <location filename="../../core/exercise.py"/>
        <source>{task} Write slurs and bows in.</source>
        <translation>{task} Bindebögen und Striche eintragen.</translation>
    </message>
    <message>
        <location filename="../../core/exercise.py"/>
        <source>Write in how the bow goes from bar {bar} on.</source>
        <translation>Ab Takt {bar} eintragen, wie der Bogen geht.</translation>
    </message>
    <message>
        <location filename="../../core/exercise.py"/>
        <source>Write in how the bow goes.</source>
        <translation>Eintragen, wie der Bogen geht.</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>its folder cannot be reached</source>
        <translation>ihr Ordner ist nicht erreichbar</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>the system takes no file of that name</source>
        <translation>das System nimmt keine Datei dieses Namens an</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>another program has it in use</source>
        <translation>ein anderes Programm benutzt sie gerade</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>you have no permission there</source>
        <translation>dort fehlt die Berechtigung</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>your share of the disk is used up</source>
        <translation>der zugeteilte Speicherplatz ist verbraucht</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>it is larger than a file may be there</source>
        <translation>sie ist größer, als eine Datei dort sein darf</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>the disk can only be read</source>
        <translation>der Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>its name is too long</source>
        <translation>ihr Name ist zu lang</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>something else has that name</source>
        <translation>etwas anderes trägt diesen Namen</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>a folder has that name</source>
        <translation>ein Ordner trägt diesen Namen</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>what should be its folder is a file</source>
        <translation>was ihr Ordner sein soll, ist eine Datei</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>its links lead round in a circle</source>
        <translation>ihre Verknüpfungen führen im Kreis</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>the disk reports a fault</source>
        <translation>der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>its folder is not there</source>
        <translation>ihr Ordner ist nicht da</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>there is no such file</source>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <location filename="../../core/file_faults.py"/>
        <source>the system does not say why</source>
        <translation>das System sagt nicht, warum</translation>
    </message>
    <message>
        <location filename="../../core/lesson.py"/>
        <source>A bowing needs a name.</source>
        <translation>Eine Strichfassung braucht einen Namen.</translation>
    </message>
    <message>
        <location filename="../../core/lesson.py"/>
        <source>There is a bowing named “{name}” already.</source>
        <translation>Es gibt schon eine Strichfassung namens „{name}“.</translation>
    </message>
    <message>
        <location filename="../../core/lesson.py"/>
        <source>A lesson keeps at least one bowing.</source>
        <translation>Eine Lektion behält mindestens eine Strichfassung.</translation>
    </message>
    <message>
        <location filename="../../core/lesson_fields.py"/>
        <source>{problem}; it was left out.</source>
        <translation>{problem}; es wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/lesson_fields.py"/>
        <source>{problem}; the usual value holds, and the field stays in the file.</source>
        <translation>{problem}; es gilt der übliche Wert, und das Feld bleibt in der Datei.</translation>
    </message>
    <message>
        <location filename="../../core/lesson_fields.py"/>
        <source>The field “{name}” says “{text}”, which is not understood</source>
        <translation>Im Feld „{name}“ steht „{text}“, was nicht verständlich ist</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>roll</source>
        <comment>ornament</comment>
        <translation>Roll</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>cut</source>
        <comment>ornament</comment>
        <translation>Cut</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>turn</source>
        <comment>ornament</comment>
        <translation>Doppelschlag</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>inverted turn</source>
        <comment>ornament</comment>
        <translation>umgekehrter Doppelschlag</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>trill</source>
        <comment>ornament</comment>
        <translation>Triller</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>mordent</source>
        <comment>ornament</comment>
        <translation>Mordent</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>upper mordent</source>
        <comment>ornament</comment>
        <translation>Pralltriller</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>slide</source>
        <comment>ornament</comment>
        <translation>Schleifer</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>bowed triplet</source>
        <comment>ornament</comment>
        <translation>gestrichene Triole</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>A held note takes no ornament.</source>
        <translation>Eine gehaltene Note nimmt keine Verzierung an.</translation>
    </message>
    <message>
        <location filename="../../core/ornamenting.py"/>
        <source>A rest takes no ornament.</source>
        <translation>Eine Pause nimmt keine Verzierung an.</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>MusicXML</source>
        <translation>MusicXML</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>ABC</source>
        <translation>ABC</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>MIDI</source>
        <translation>MIDI</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Sound</source>
        <translation>Klang</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Files</source>
        <translation>Dateien</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/pack/contents.py"/>
        <source>{n} lessons, made by Bowbench.</source>
        <extracomment>one: 1 lesson, made by Bowbench.</extracomment>
        <translation>
            <numerusform>1 Lektion, erstellt mit Bowbench.</numerusform>
            <numerusform>{n} Lektionen, erstellt mit Bowbench.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Left out, since this version cannot make it: {kind}.</source>
        <translation>Weggelassen, weil diese Version es nicht herstellen kann: {kind}.</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>What could not be packed, or was repaired</source>
        <translation>Was nicht gepackt werden konnte oder repariert wurde</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>en</source>
        <comment>code of the language of this page</comment>
        <translation>de</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>accents {plan}</source>
        <translation>Betonungen {plan}</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>{kind} ({which})</source>
        <translation>{kind} ({which})</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>Sheets to print</source>
        <translation>Blätter zum Drucken</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>The lesson in MusicXML</source>
        <translation>Die Lektion in MusicXML</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>ABC with every bow marked</source>
        <translation>ABC mit jedem Strich bezeichnet</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>MIDI of each bowing</source>
        <translation>MIDI jeder Strichfassung</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>Sound of each bowing, with chords (MP3)</source>
        <translation>Klang jeder Strichfassung, mit Akkorden (MP3)</translation>
    </message>
    <message>
        <location filename="../../core/pack/kinds.py"/>
        <source>“{wrong}” does not go into a pack: expected {known}</source>
        <translation>„{wrong}“ kommt nicht in ein Paket: erwartet wird {known}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>is joined or marked otherwise</source>
        <translation>ist anders verbunden oder bezeichnet</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>begins on {bow}</source>
        <translation>beginnt mit {bow}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>{change} in {bars}</source>
        <translation>{change} in {bars}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>and more</source>
        <translation>und mehr</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>the other bow throughout</source>
        <translation>durchweg der andere Strich</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} accents more missed</source>
        <extracomment>one: 1 accent more missed</extracomment>
        <translation>
            <numerusform>1 Betonung mehr verfehlt</numerusform>
            <numerusform>{n} Betonungen mehr verfehlt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} accents fewer missed</source>
        <extracomment>one: 1 accent fewer missed</extracomment>
        <translation>
            <numerusform>1 Betonung weniger verfehlt</numerusform>
            <numerusform>{n} Betonungen weniger verfehlt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} things more broken</source>
        <extracomment>one: 1 thing more broken</extracomment>
        <translation>
            <numerusform>1 Bruch mehr</numerusform>
            <numerusform>{n} Brüche mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} things fewer broken</source>
        <extracomment>one: 1 thing fewer broken</extracomment>
        <translation>
            <numerusform>1 Bruch weniger</numerusform>
            <numerusform>{n} Brüche weniger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} slurs more</source>
        <extracomment>one: 1 slur more</extracomment>
        <translation>
            <numerusform>1 Bindebogen mehr</numerusform>
            <numerusform>{n} Bindebögen mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} slurs fewer</source>
        <extracomment>one: 1 slur fewer</extracomment>
        <translation>
            <numerusform>1 Bindebogen weniger</numerusform>
            <numerusform>{n} Bindebögen weniger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} retakes more</source>
        <extracomment>one: 1 retake more</extracomment>
        <translation>
            <numerusform>1 Neuansatz mehr</numerusform>
            <numerusform>{n} Neuansätze mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>{n} retakes fewer</source>
        <extracomment>one: 1 retake fewer</extracomment>
        <translation>
            <numerusform>1 Neuansatz weniger</numerusform>
            <numerusform>{n} Neuansätze weniger</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>note {last} with the bar before</source>
        <translation>Note {last} mit dem Takt davor</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>notes 1–{last} with the bar before</source>
        <translation>Note 1–{last} mit dem Takt davor</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>notes {first}–{last}</source>
        <translation>Note {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>slurs {notes}</source>
        <translation>bindet {notes}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>parts {notes}</source>
        <translation>trennt {notes}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>retakes note {number}</source>
        <translation>setzt Note {number} neu an</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>takes note {number} on {bow}</source>
        <translation>nimmt Note {number} als {bow}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>retakes note {number} no more</source>
        <translation>setzt Note {number} nicht mehr neu an</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>drops the mark on note {number}</source>
        <translation>lässt das Zeichen auf Note {number} weg</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>begins on {bow}, not {other}</source>
        <translation>beginnt mit {bow}, nicht mit {other}</translation>
    </message>
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>begins on {bow} every time</source>
        <translation>beginnt jedes Mal mit {bow}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/account.py"/>
        <source>drives {now} of {n} accents, not {driven}</source>
        <extracomment>one: drives {now} of 1 accent, not {driven}</extracomment>
        <translation>
            <numerusform>treibt {now} von 1 Betonung, nicht {driven}</numerusform>
            <numerusform>treibt {now} von {n} Betonungen, nicht {driven}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/plan.py"/>
        <source>No bowing was found in the time allowed: choose fewer bars, or allow more time.</source>
        <translation>In der gegebenen Zeit fand sich keine Strichfassung: weniger Takte wählen oder mehr Zeit geben.</translation>
    </message>
    <message>
        <location filename="../../core/planner/plan.py"/>
        <source>The marks and slurs that are kept contradict one another in bar {printed} or in the bar before: free a mark or part a slur there.</source>
        <translation>Die beibehaltenen Zeichen und Bindebögen widersprechen sich in Takt {printed} oder im Takt davor: dort ein Zeichen freigeben oder einen Bindebogen trennen.</translation>
    </message>
    <message>
        <location filename="../../core/planner/problem.py"/>
        <source>In bar {number} one stroke runs through the whole bar from the bar before into the bar behind: part it there first.</source>
        <translation>In Takt {number} geht ein Strich vom Takt davor durch den ganzen Takt in den nächsten: zuerst dort trennen.</translation>
    </message>
    <message>
        <location filename="../../core/planner/scale.py"/>
        <source>The tune is too long to work out a bowing for all of it at once: choose some bars.</source>
        <translation>Das Stück ist zu lang, um alles auf einmal auszuarbeiten: einige Takte auswählen.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>This tune lies best on the beat: {outcome}, with {slurs}.</source>
        <translation>Dieses Stück liegt am besten auf dem Schlag: {outcome}, mit {slurs}.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>This tune lies best on the backbeat: {outcome}, with {slurs}.</source>
        <translation>Dieses Stück liegt am besten auf dem Backbeat: {outcome}, mit {slurs}.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>This tune lies best by phrase: {outcome}, with {slurs}.</source>
        <translation>Dieses Stück liegt am besten phrasenweise: {outcome}, mit {slurs}.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>On the beat it takes fewer slurs, but {why}.</source>
        <translation>Auf dem Schlag braucht es weniger Bögen, aber {why}.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>On the backbeat it takes fewer slurs, but {why}.</source>
        <translation>Auf dem Backbeat braucht es weniger Bögen, aber {why}.</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>By phrase it takes fewer slurs, but {why}.</source>
        <translation>Phrasenweise braucht es weniger Bögen, aber {why}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} accents missed</source>
        <extracomment>one: 1 accent missed</extracomment>
        <translation>
            <numerusform>1 Betonung verfehlt</numerusform>
            <numerusform>{n} Betonungen verfehlt</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>every accent driven and everything that comes again bowed alike</source>
        <translation>jede Betonung getrieben und alles, was wiederkommt, gleich gestrichen</translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>no slur at all</source>
        <translation>gar keinem Bindebogen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>It asks for {n} accents in one playing, “{plan}” for {more}.</source>
        <extracomment>one: It asks for 1 accent in one playing, “{plan}” for {more}.</extracomment>
        <translation>
            <numerusform>Verlangt ist 1 Akzent in einem Durchgang, bei „{plan}“ {more}.</numerusform>
            <numerusform>Verlangt sind {n} Akzente in einem Durchgang, bei „{plan}“ {more}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} of them join equal notes</source>
        <extracomment>one: one joins two equal notes</extracomment>
        <translation>
            <numerusform>einer davon verbindet zwei gleiche Töne</numerusform>
            <numerusform>{n} davon verbinden gleiche Töne</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>they are harder to play</source>
        <translation>sie sind schwerer zu spielen</translation>
    </message>
    <message>
        <location filename="../../core/planner/versions.py"/>
        <source>On the beat, fewest slurs</source>
        <translation>Auf dem Schlag, wenige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../core/planner/versions.py"/>
        <source>Backbeat, fewest slurs</source>
        <translation>Backbeat, wenige Bindebögen</translation>
    </message>
    <message>
        <location filename="../../core/planner/versions.py"/>
        <source>By phrase, smooth</source>
        <translation>Phrasenweise, fließend</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The hair must be {least} to {most} cm, not {value}.</source>
        <translation>Der Bezug muss {least} bis {most} cm lang sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The slowest bow speed must be {least} to {most} cm/s, not {value}.</source>
        <translation>Die langsamste Bogengeschwindigkeit muss {least} bis {most} cm/s sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The fastest bow speed must be {least} to {most} cm/s, not {value}.</source>
        <translation>Die schnellste Bogengeschwindigkeit muss {least} bis {most} cm/s sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The even bow speed must be {least} to {most} cm/s, not {value}.</source>
        <translation>Die gleichmäßige Bogengeschwindigkeit muss {least} bis {most} cm/s sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The tempo must be {least} to {most} beats a minute, not {value}.</source>
        <translation>Das Tempo muss {least} bis {most} Schläge in der Minute sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The beat must be {least} to {most} quarter notes, not {value}.</source>
        <translation>Der Schlag muss {least} bis {most} Viertel lang sein, nicht {value}.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The slowest bow speed must not be above the fastest.</source>
        <translation>Die langsamste Bogengeschwindigkeit darf nicht über der schnellsten liegen.</translation>
    </message>
    <message>
        <location filename="../../core/reach.py"/>
        <source>The even bow speed must lie between the slowest and the fastest.</source>
        <translation>Die gleichmäßige Bogengeschwindigkeit muss zwischen der langsamsten und der schnellsten liegen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>Lyrics under the notes (w:) are left out.</source>
        <translation>Liedtext unter den Noten (w:) wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>Symbol lines (s:) are left out.</source>
        <translation>Symbolzeilen (s:) werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <location filename="../../core/reading/abc_music.py"/>
        <source>Macros (m:) are left out.</source>
        <translation>Makros (m:) werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The text is longer than {most} million characters.</source>
        <translation>Der Text ist länger als {most} Millionen Zeichen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The text has more than {most} lines.</source>
        <translation>Der Text hat mehr als {most} Zeilen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The text is indented: read as if not.</source>
        <translation>Der Text ist eingerückt: Er wird gelesen, als wäre er es nicht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The file has more than {most} notes and bars: the rest is left out.</source>
        <translation>Die Datei hat mehr als {most} Noten und Takte: Der Rest wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The file has more than {most} tunes: the rest is left out.</source>
        <translation>Die Datei hat mehr als {most} Stücke: Der Rest wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The text is empty: expected a tune in ABC, beginning with X:1.</source>
        <translation>Der Text ist leer: erwartet wird ein Stück in ABC, das mit X:1 beginnt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>No tune can be read. {problem}</source>
        <translation>Es lässt sich kein Stück lesen. {problem}</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>No tune found: expected MusicXML, or ABC with X:1, T: a title, K: a key, and notes below.</source>
        <translation>Kein Stück gefunden: erwartet wird MusicXML oder ABC mit X:1, T: einem Titel, K: einer Tonart und Noten darunter.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>An empty line stands inside the tune: the tune is read on after it.</source>
        <translation>Mitten im Stück steht eine Leerzeile: Das Stück wird danach weitergelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The tune has no X: line: it is read as tune 1.</source>
        <translation>Das Stück hat keine X:-Zeile: Es wird als Stück 1 gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The tune has no K: line: it is read without sharps and flats.</source>
        <translation>Das Stück hat keine K:-Zeile: Es wird ohne Vorzeichen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The tune “{title}” has no notes: it is left out.</source>
        <translation>Das Stück „{title}“ hat keine Noten: Es wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The tune has no notes: it is left out.</source>
        <translation>Das Stück hat keine Noten: Es wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The part order names {names}, which no P: in the tune begins: the order is left out.</source>
        <translation>Die Reihenfolge der Teile nennt {names}, was im Stück kein P: beginnt: Die Reihenfolge wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>The text went through a mail program that wrote =3D for = and the like: undone.</source>
        <translation>Der Text ging durch ein Mailprogramm, das =3D für = und dergleichen schrieb: rückgängig gemacht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>“{line}” is not a field such as T:, M: or K:: the line is ignored.</source>
        <translation>„{line}“ ist kein Feld wie T:, M: oder K:: Die Zeile wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>“X:{number}” is no tune number: the tune&apos;s place in the file is taken.</source>
        <translation>„X:{number}“ ist keine Stücknummer: Es gilt der Platz des Stücks in der Datei.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc.py"/>
        <source>“{line}” is not music: the line is ignored.</source>
        <translation>„{line}“ ist keine Musik: Die Zeile wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_bars.py"/>
        <source>No note values show a length of {length} of a whole note: it is rounded.</source>
        <translation>Kein Notenwert zeigt eine Länge von {length} einer ganzen Note: Sie wird gerundet.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/reading/abc_bars.py"/>
        <source>{odd} of {n} bars do not fill the metre {metre}, bar {bar} the first: kept.</source>
        <extracomment>one: {odd} of 1 bar does not fill the metre {metre}, bar {bar} the first: kept.</extracomment>
        <translation>
            <numerusform>{odd} von 1 Takt füllt die Taktart {metre} nicht, zuerst Takt {bar}: beibehalten.</numerusform>
            <numerusform>{odd} von {n} Takten füllen die Taktart {metre} nicht, zuerst Takt {bar}: beibehalten.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_bars.py"/>
        <source>Bar {bar} is longer than {meter}: it holds {length} of a whole note, not {full}; kept as it stands.</source>
        <translation>Takt {bar} ist länger als {meter}: Er fasst {length} einer ganzen Note, nicht {full}; beibehalten, wie er steht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_bars.py"/>
        <source>Bar {bar} is shorter than {meter}: it holds {length} of a whole note, not {full}; kept as it stands.</source>
        <translation>Takt {bar} ist kürzer als {meter}: Er fasst {length} einer ganzen Note, nicht {full}; beibehalten, wie er steht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_bars.py"/>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A slur begins on a rest: it is read from the note after it.</source>
        <translation>Ein Bindebogen beginnt auf einer Pause: Er wird ab der Note danach gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_bars.py"/>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A slur runs over a rest: it is read as ending before the rest.</source>
        <translation>Ein Bindebogen geht über eine Pause: Er wird so gelesen, als endete er davor.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_draft.py"/>
        <source>More was repaired in this tune than is listed here.</source>
        <translation>In diesem Stück wurde mehr repariert, als hier aufgeführt ist.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The metre “{text}” is not one of 6/8, C, C|, (2+3+2)/8 or none: read as free metre.</source>
        <translation>Die Taktart „{text}“ ist nicht 6/8, C, C|, (2+3+2)/8 oder none: gelesen als freier Takt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The unit note length “{text}” is not one of 1, 1/2, 1/4 ... 1/512: the field is ignored.</source>
        <translation>Die Grundnotenlänge „{text}“ ist nicht 1, 1/2, 1/4 ... 1/512: Das Feld wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The tempo “{text}” has no beat and number such as 1/4=120: it is left out.</source>
        <translation>Das Tempo „{text}“ hat keinen Schlag mit Zahl wie 1/4=120: Es wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The part order plays more than {most} parts: it is ignored.</source>
        <translation>Die Reihenfolge der Teile spielt mehr als {most} Teile: Sie wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The part order “{text}” is read as {order}.</source>
        <translation>Die Reihenfolge der Teile „{text}“ wird als {order} gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>K:HP hides the sharps of the pipes&apos; scale: F and C sharp are shown as the key signature.</source>
        <translation>K:HP verbirgt die Kreuze der Dudelsackleiter: Fis und Cis werden als Vorzeichen gezeigt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>The clef “{text}” is left out: the tune is shown in the treble clef.</source>
        <translation>Der Schlüssel „{text}“ wird weggelassen: Das Stück steht im Violinschlüssel.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>“{text}” in the key field is left out: the tune is shown at the pitch written.</source>
        <translation>„{text}“ im Tonartfeld wird weggelassen: Das Stück steht in der notierten Tonhöhe.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>“{text}” in the key “{key}” is no mode: it is ignored.</source>
        <translation>„{text}“ in der Tonart „{key}“ ist kein Tongeschlecht: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>“{text}” is no key: read as no sharps and no flats.</source>
        <translation>„{text}“ ist keine Tonart: gelesen als ohne Vorzeichen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>A key of {count} sharps or flats cannot be shown: the doubled ones stand beside the signature.</source>
        <translation>Eine Tonart mit {count} Vorzeichen lässt sich nicht zeigen: Die doppelten stehen neben den Vorzeichen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_fields.py"/>
        <source>“U:{text}” is no user symbol such as T = !trill!: it is ignored.</source>
        <translation>„U:{text}“ ist kein eigenes Zeichen wie T = !trill!: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>The letter {letter} stands for nothing here: it is ignored.</source>
        <translation>Der Buchstabe {letter} steht hier für nichts: Er wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>The decoration !{name}! is not known: it is ignored.</source>
        <translation>Die Verzierung !{name}! ist unbekannt: Sie wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>“&gt;” in quotation marks is read as an accent.</source>
        <translation>„&gt;“ in Anführungszeichen wird als Akzent gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>“{words}” in quotation marks is read as the sign.</source>
        <translation>„{words}“ in Anführungszeichen wird als das Zeichen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>“{words}” is no chord symbol: it is read as words above the staff.</source>
        <translation>„{words}“ ist kein Akkordsymbol: Es wird als Text über der Notenzeile gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>More than {most} grace notes stand before one note: the others are left out.</source>
        <translation>Vor einer Note stehen mehr als {most} Vorschlagsnoten: Die übrigen werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>Grace notes before a rest are left out.</source>
        <translation>Vorschlagsnoten vor einer Pause werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>A bow mark on a rest is read on the note after it.</source>
        <translation>Ein Strichzeichen auf einer Pause wird auf der Note danach gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>A mark on a rest is left out.</source>
        <translation>Ein Zeichen auf einer Pause wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>A bow mark on the second note of a tie is left out: nothing is struck there.</source>
        <translation>Ein Strichzeichen auf der zweiten Note eines Haltebogens wird weggelassen: Dort wird nichts angestrichen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>An up-bow and a down-bow stand on one note: the first is kept.</source>
        <translation>Auf einer Note stehen Aufstrich und Abstrich: Das erste Zeichen gilt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>A fermata on a bar line is left out.</source>
        <translation>Eine Fermate auf einem Taktstrich wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>A bow mark before a bar line is read on the note after it.</source>
        <translation>Ein Strichzeichen vor einem Taktstrich wird auf der Note danach gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_marks.py"/>
        <source>Grace notes after the last note belong to none: they are left out.</source>
        <translation>Vorschlagsnoten nach der letzten Note gehören zu keiner: Sie werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The key changes inside a bar: the new signature is shown from the next bar line on.</source>
        <translation>Die Tonart wechselt mitten im Takt: Die neuen Vorzeichen stehen ab dem nächsten Taktstrich.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The metre changes inside a bar: it is read as changing at the next bar line.</source>
        <translation>Die Taktart wechselt mitten im Takt: Der Wechsel wird am nächsten Taktstrich gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The tempo changes inside the tune: the one at the start is kept.</source>
        <translation>Das Tempo wechselt mitten im Stück: Das vom Anfang gilt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>Only the first voice is read: voice {voice} is left out.</source>
        <translation>Nur die erste Stimme wird gelesen: Stimme {voice} wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A second voice laid over a bar with &amp; is left out.</source>
        <translation>Eine zweite Stimme, die mit &amp; über einen Takt gelegt ist, wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The tune has more than {most} bars: what follows is left out.</source>
        <translation>Das Stück hat mehr als {most} Takte: Was folgt, wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A bar holds more than {most} notes: it is cut there.</source>
        <translation>Ein Takt fasst mehr als {most} Noten: Er wird dort abgeschnitten.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A rest of whole bars stands inside a bar: it is read as a short rest.</source>
        <translation>Eine Pause über ganze Takte steht mitten im Takt: Sie wird als kurze Pause gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“[{inside}]” holds more than notes: the rest is ignored.</source>
        <translation>„[{inside}]“ enthält mehr als Noten: Der Rest wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“[{inside}]” holds no notes: it is ignored.</source>
        <translation>„[{inside}]“ enthält keine Noten: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A chord of more than {most} notes is cut to its first ones.</source>
        <translation>Ein Akkord mit mehr als {most} Noten wird auf die ersten gekürzt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“{text}” does not stand between two notes of a bar: it is ignored.</source>
        <translation>„{text}“ steht nicht zwischen zwei Noten eines Taktes: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“{text}” is no tuplet: it is ignored.</source>
        <translation>„{text}“ ist keine Triole oder dergleichen: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A tie has no note before it: it is left out.</source>
        <translation>Vor einem Haltebogen steht keine Note: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A tie must touch the note that it leads from: it is read as if it did.</source>
        <translation>Ein Haltebogen muss die Note berühren, von der er ausgeht: Er wird gelesen, als täte er es.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A repeat ends before the first note: it is ignored.</source>
        <translation>Eine Wiederholung endet vor der ersten Note: Sie wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The number {text} belongs to no note: it is ignored.</source>
        <translation>Die Zahl {text} gehört zu keiner Note: Sie wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The ending {text} should touch its bar line: it is read as if it did.</source>
        <translation>Die Klammer {text} sollte ihren Taktstrich berühren: Sie wird gelesen, als täte sie es.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“{text}” is no list of passes for an ending: it is ignored.</source>
        <translation>„{text}“ ist keine Liste von Durchgängen für eine Klammer: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The sign {char} is kept for later versions of ABC: it is ignored.</source>
        <translation>Das Zeichen {char} ist späteren Fassungen von ABC vorbehalten: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>A quotation mark has no partner on its line: it is ignored.</source>
        <translation>Ein Anführungszeichen hat in seiner Zeile kein Gegenstück: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>“{char}” has no partner here: it is ignored.</source>
        <translation>„{char}“ hat hier kein Gegenstück: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_music.py"/>
        <source>The sign “{char}” has no meaning in music: it is ignored.</source>
        <translation>Das Zeichen „{char}“ hat in der Musik keine Bedeutung: Es wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_pitches.py"/>
        <source>A note beyond all instruments is moved to the nearest octave that can be shown.</source>
        <translation>Eine Note jenseits aller Instrumente wird in die nächste darstellbare Oktave verlegt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_rhythm.py"/>
        <source>“{text}” is no length of a note: read as the unit note length.</source>
        <translation>„{text}“ ist keine Notenlänge: gelesen als Grundnotenlänge.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_rhythm.py"/>
        <source>A tuplet begins before the last one is full: the earlier one ends there.</source>
        <translation>Eine Triole oder dergleichen beginnt, bevor die letzte voll ist: Die frühere endet dort.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_rhythm.py"/>
        <source>A tuplet has too few notes before the bar line: it ends there.</source>
        <translation>Eine Triole oder dergleichen hat vor dem Taktstrich zu wenige Noten: Sie endet dort.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_rhythm.py"/>
        <source>A broken rhythm has no second note before the bar line: it is ignored.</source>
        <translation>Ein punktierter Rhythmus hat vor dem Taktstrich keine zweite Note: Er wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_signs.py"/>
        <source>Dynamics such as !{name}! are left out.</source>
        <translation>Dynamikangaben wie !{name}! werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_signs.py"/>
        <source>Phrase marks such as !{name}! are left out.</source>
        <translation>Phrasierungszeichen wie !{name}! werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_signs.py"/>
        <source>Marks that the fiddle page has no sign for such as !{name}! are left out.</source>
        <translation>Zeichen wie !{name}!, für die das Geigenblatt keines hat, werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur holds no notes: it is left out.</source>
        <translation>Ein Bindebogen umfasst keine Noten: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur ends here that never began: it is left out.</source>
        <translation>Hier endet ein Bindebogen, der nie begann: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur ends on the note where the next begins: both are read as one stroke.</source>
        <translation>Ein Bindebogen endet auf der Note, auf der der nächste beginnt: Beide werden als ein Strich gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur holds one note only: it is left out.</source>
        <translation>Ein Bindebogen umfasst nur eine Note: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A tie leads to a rest: it is left out.</source>
        <translation>Ein Haltebogen führt zu einer Pause: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A tie joins notes that are not the same: it and any like it are read as slurs.</source>
        <translation>Ein Haltebogen verbindet ungleiche Noten: Er und alle seinesgleichen werden als Bindebögen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur begins here and never ends: it is left out.</source>
        <translation>Hier beginnt ein Bindebogen, der nie endet: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A slur begins after the last note: it is left out.</source>
        <translation>Ein Bindebogen beginnt nach der letzten Note: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/abc_slurs.py"/>
        <source>A tie leads from the last note to nothing: it is left out.</source>
        <translation>Ein Haltebogen führt von der letzten Note ins Leere: Er wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/barline_reader.py"/>
        <source>A bar line inside a bar was left out.</source>
        <translation>Ein Taktstrich mitten im Takt wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/barline_reader.py"/>
        <source>A repeat cannot be played “{times}” times: it is played twice.</source>
        <translation>Eine Wiederholung lässt sich nicht „{times}“-mal spielen: Sie wird zweimal gespielt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/barline_reader.py"/>
        <source>An ending without a number: it is taken as ending {number}.</source>
        <translation>Eine Klammer ohne Nummer: Sie gilt als Klammer {number}.</translation>
    </message>
    <message>
        <location filename="../../core/reading/direction_reader.py"/>
        <source>Chords given by scale degree were left out.</source>
        <translation>Als Stufen angegebene Akkorde wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/direction_reader.py"/>
        <source>A chord symbol of more than {most} characters was left out.</source>
        <translation>Ein Akkordsymbol mit mehr als {most} Zeichen wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/direction_reader.py"/>
        <source>A chord of a kind without a usual name is shown by its root only.</source>
        <translation>Ein Akkord einer Art ohne üblichen Namen steht nur mit seinem Grundton da.</translation>
    </message>
    <message>
        <location filename="../../core/reading/direction_reader.py"/>
        <source>A metronome mark that gives no number of beats a minute was left out.</source>
        <translation>Eine Metronomangabe ohne Zahl der Schläge in der Minute wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/direction_reader.py"/>
        <source>The tempo changes inside the tune: only the one at the start is kept.</source>
        <translation>Das Tempo wechselt mitten im Stück: Nur das vom Anfang gilt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>accidentals on ornaments</source>
        <comment>in a list of what is left out</comment>
        <translation>Vorzeichen an Verzierungen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>arpeggios</source>
        <comment>in a list of what is left out</comment>
        <translation>Arpeggien</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>bends</source>
        <comment>in a list of what is left out</comment>
        <translation>Ziehtöne</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>brackets</source>
        <comment>in a list of what is left out</comment>
        <translation>Klammern</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>caesuras</source>
        <comment>in a list of what is left out</comment>
        <translation>Zäsuren</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>dashed lines</source>
        <comment>in a list of what is left out</comment>
        <translation>gestrichelte Linien</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>delayed turns</source>
        <comment>in a list of what is left out</comment>
        <translation>verzögerte Doppelschläge</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>doits</source>
        <comment>in a list of what is left out</comment>
        <translation>aufwärts gezogene Töne</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>dynamics</source>
        <comment>in a list of what is left out</comment>
        <translation>Dynamik</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>falloffs</source>
        <comment>in a list of what is left out</comment>
        <translation>abfallende Töne</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>figured bass</source>
        <comment>in a list of what is left out</comment>
        <translation>bezifferter Bass</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>frets</source>
        <comment>in a list of what is left out</comment>
        <translation>Bünde</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>glissandos</source>
        <comment>in a list of what is left out</comment>
        <translation>Glissandi</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>hammer-ons</source>
        <comment>in a list of what is left out</comment>
        <translation>Aufschlagbindungen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>harp pedals</source>
        <comment>in a list of what is left out</comment>
        <translation>Harfenpedale</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>Haydn signs</source>
        <comment>in a list of what is left out</comment>
        <translation>Haydn-Zeichen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>lyrics</source>
        <comment>in a list of what is left out</comment>
        <translation>Liedtext</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>measure styles</source>
        <comment>in a list of what is left out</comment>
        <translation>Taktformate</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>arpeggio brackets</source>
        <comment>in a list of what is left out</comment>
        <translation>Arpeggioklammern</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>octave lines</source>
        <comment>in a list of what is left out</comment>
        <translation>Oktavlinien</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>other directions</source>
        <comment>in a list of what is left out</comment>
        <translation>andere Anweisungen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>pedal marks</source>
        <comment>in a list of what is left out</comment>
        <translation>Pedalzeichen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>percussion signs</source>
        <comment>in a list of what is left out</comment>
        <translation>Schlagzeugzeichen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>plops</source>
        <comment>in a list of what is left out</comment>
        <translation>von oben angezogene Töne</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>plucking fingers</source>
        <comment>in a list of what is left out</comment>
        <translation>Zupffinger</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>voice marks</source>
        <comment>in a list of what is left out</comment>
        <translation>Stimmzeichen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>pull-offs</source>
        <comment>in a list of what is left out</comment>
        <translation>Abzugbindungen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>scoops</source>
        <comment>in a list of what is left out</comment>
        <translation>von unten angezogene Töne</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>shakes</source>
        <comment>in a list of what is left out</comment>
        <translation>Bebungen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>slides between notes</source>
        <comment>in a list of what is left out</comment>
        <translation>Schleifer zwischen Noten</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>soft accents</source>
        <comment>in a list of what is left out</comment>
        <translation>weiche Akzente</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>string numbers</source>
        <comment>in a list of what is left out</comment>
        <translation>Saitennummern</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>symbols</source>
        <comment>in a list of what is left out</comment>
        <translation>Symbole</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>thumb positions</source>
        <comment>in a list of what is left out</comment>
        <translation>Daumenlagen</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>tremolos</source>
        <comment>in a list of what is left out</comment>
        <translation>Tremoli</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>wavy lines</source>
        <comment>in a list of what is left out</comment>
        <translation>Wellenlinien</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>hairpins</source>
        <comment>in a list of what is left out</comment>
        <translation>Gabeln für lauter und leiser</translation>
    </message>
    <message>
        <location filename="../../core/reading/left_out.py"/>
        <source>Left out, since lessons have no place for it: {kind}.</source>
        <translation>Weggelassen, weil Lektionen keinen Platz dafür haben: {kind}.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A part has more than {most} measures: the rest was left out.</source>
        <translation>Eine Stimme hat mehr als {most} Takte: Der Rest wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>The score has more than {most} notes: the rest was left out.</source>
        <translation>Die Partitur hat mehr als {most} Noten: Der Rest wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>Grace notes after the last note have none to lead to: they were left out.</source>
        <translation>Vorschlagsnoten nach der letzten Note führen zu keiner: Sie wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>“{text}” is no number of divisions: it was ignored.</source>
        <translation>„{text}“ ist keine Zahl von Unterteilungen (divisions): Es wurde übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A clef other than the treble clef: the notes are shown in the treble clef.</source>
        <translation>Ein anderer Schlüssel als der Violinschlüssel: Die Noten stehen im Violinschlüssel.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A transposing part: its notes are kept as written, not as they sound.</source>
        <translation>Eine transponierende Stimme: Die Noten bleiben, wie sie geschrieben sind, nicht, wie sie klingen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>The key changes inside a bar: the new signature is shown from the next bar on.</source>
        <translation>Die Tonart wechselt mitten im Takt: Die neuen Vorzeichen stehen ab dem nächsten Takt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>The metre changes inside a bar: it is read as changing at the next bar.</source>
        <translation>Die Taktart wechselt mitten im Takt: Der Wechsel wird am nächsten Takt gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A backup without a duration: it was ignored.</source>
        <translation>Ein „backup“ ohne Dauer: Es wurde übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A forward without a usable duration: it was ignored.</source>
        <translation>Ein „forward“ ohne brauchbare Dauer: Es wurde übergangen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>A chord note without a note before it: it was left out.</source>
        <translation>Ein Akkordton ohne Note davor: Er wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A measure has more than {most} notes: the rest was left out.</source>
        <translation>Ein Takt hat mehr als {most} Noten: Der Rest wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>More than {most} grace notes before one note: the others were left out.</source>
        <translation>Mehr als {most} Vorschlagsnoten vor einer Note: Die übrigen wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>Grace notes before a rest have no note to lead to: they were left out.</source>
        <translation>Vorschlagsnoten vor einer Pause führen zu keiner Note: Sie wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/measure_reader.py"/>
        <source>Grace notes at the end of a bar were put before the first note of the next.</source>
        <translation>Vorschlagsnoten am Taktende wurden vor die erste Note des nächsten Taktes gesetzt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>The document is a “{name}”, not a MusicXML score (score-partwise or score-timewise).</source>
        <translation>Das Dokument ist ein „{name}“, keine MusicXML-Partitur (score-partwise oder score-timewise).</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>The file was written by a later version of this program: what is new there is left out.</source>
        <translation>Die Datei stammt von einer neueren Version dieses Programms: Was dort neu ist, wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>The score has no part with measures in it.</source>
        <translation>Die Partitur hat keine Stimme mit Takten.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>The score has more than {most} parts: some were left out.</source>
        <translation>Die Partitur hat mehr als {most} Stimmen: Einige wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>A part that the part list does not name was read without a name.</source>
        <translation>Eine Stimme, die in der Stimmenliste fehlt, wurde ohne Namen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>The part list names a part “{name}” that is not in the file.</source>
        <translation>Die Stimmenliste nennt eine Stimme „{name}“, die nicht in der Datei steht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml.py"/>
        <source>Part “{name}” has no pitched notes: it was left out.</source>
        <translation>Die Stimme „{name}“ hat keine Noten mit Tonhöhe: Sie wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>“{text}” is no number of sharps or flats: the key is read as having none.</source>
        <translation>„{text}“ ist keine Zahl von Vorzeichen: Die Tonart wird ohne gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>A key of {count} accidentals cannot be shown: the key is read as having none.</source>
        <translation>Eine Tonart mit {count} Vorzeichen lässt sich nicht zeigen: Sie wird ohne gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>A step of the key signature that cannot be understood was left out.</source>
        <translation>Eine unverständliche Stufe der Vorzeichen wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>Alterations in the key signature between the semitones were moved to the nearest.</source>
        <translation>Veränderungen in den Vorzeichen zwischen den Halbtönen wurden auf den nächsten verlegt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>“{beats}/{unit}” is no metre: the one before goes on.</source>
        <translation>„{beats}/{unit}“ ist keine Taktart: Die vorige gilt weiter.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>“{beats_text}/{unit_text}” cannot be counted as a metre: the one before goes on.</source>
        <translation>„{beats_text}/{unit_text}“ lässt sich nicht als Taktart zählen: Die vorige gilt weiter.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>A time signature without figures: the one before goes on.</source>
        <translation>Eine Taktangabe ohne Ziffern: Die vorige gilt weiter.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>A metre of different units is shown as {metre}/{unit}.</source>
        <translation>Eine Taktart mit verschiedenen Einheiten steht als {metre}/{unit} da.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_attributes.py"/>
        <source>The second of two metres that take turns was left out.</source>
        <translation>Die zweite von zwei abwechselnden Taktarten wurde weggelassen.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>{n} other voices were left out of part “{name}”: a lesson has one melody line.</source>
        <extracomment>one: One other voice was left out of part “{name}”: a lesson has one melody line.</extracomment>
        <translation>
            <numerusform>Eine weitere Stimme aus „{name}“ wurde weggelassen: Eine Lektion hat eine Melodiestimme.</numerusform>
            <numerusform>{n} weitere Stimmen aus „{name}“ wurden weggelassen: Eine Lektion hat eine Melodiestimme.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A note that begins before the one before it ends was left out.</source>
        <translation>Eine Note, die beginnt, bevor die vorige endet, wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>An empty measure: a rest was put in.</source>
        <translation>Ein leerer Takt: Eine Pause wurde eingesetzt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A repeat sign in the middle of a note was left out.</source>
        <translation>Ein Wiederholungszeichen mitten in einer Note wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A tie that lacks one end was read as a tie, since the same note follows.</source>
        <translation>Ein Haltebogen, dem ein Ende fehlt, wurde als Haltebogen gelesen, weil dieselbe Note folgt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A tie that holds one note of a double stop only was left out.</source>
        <translation>Ein Haltebogen, der nur einen Ton eines Doppelgriffs hält, wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A tie without the same note on its other side was left out.</source>
        <translation>Ein Haltebogen ohne dieselbe Note auf der anderen Seite wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A length that no note value can show was rounded.</source>
        <translation>Eine Länge, die kein Notenwert zeigt, wurde gerundet.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>A length that no single note value can show was written as tied notes.</source>
        <translation>Eine Länge, die kein einzelner Notenwert zeigt, wurde als gehaltene Noten geschrieben.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bars.py"/>
        <source>An ending without an end was closed at the next repeat or double bar.</source>
        <translation>Eine Klammer ohne Ende wurde bei der nächsten Wiederholung oder beim nächsten Doppelstrich geschlossen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A bow mark on a rest was left out.</source>
        <translation>Ein Strichzeichen auf einer Pause wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A bow mark on the second note of a tie was left out: nothing is struck there.</source>
        <translation>Ein Strichzeichen auf der zweiten Note eines Haltebogens wurde weggelassen: Dort wird nichts angestrichen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A slur that ends without having begun was left out.</source>
        <translation>Ein Bindebogen, der endet, ohne begonnen zu haben, wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A slur that never ends was left out.</source>
        <translation>Ein Bindebogen, der nie endet, wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A slur begins on the note where another ends: both are read as one stroke.</source>
        <translation>Ein Bindebogen beginnt auf der Note, auf der ein anderer endet: Beide werden als ein Strich gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>“{name}”: its notes have lost all bow marks; those that were fixed are kept.</source>
        <translation>„{name}“: Die Noten haben alle Strichzeichen verloren; die festen bleiben erhalten.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>“{name}”: the fixed bow mark of {note} is gone from the notes.</source>
        <translation>„{name}“: Das feste Strichzeichen ({note}) ist aus den Noten verschwunden.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>A bow mark inside a stroke was left out.</source>
        <translation>Ein Strichzeichen mitten in einem Strich wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>“{name}”: the down-bow of {note} does not follow from the strokes before it; it is taken as fixed.</source>
        <translation>„{name}“: Der Abstrich ({note}) folgt nicht aus den Strichen davor; er gilt als fest.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>“{name}”: the up-bow of {note} does not follow from the strokes before it; it is taken as fixed.</source>
        <translation>„{name}“: Der Aufstrich ({note}) folgt nicht aus den Strichen davor; er gilt als fest.</translation>
    </message>
    <message>
        <location filename="../../core/reading/musicxml_bowing.py"/>
        <source>note {place} in bar {bar}</source>
        <translation>Note {place} in Takt {bar}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/reading/musicxml_draft.py"/>
        <source>{text} ({n} times, first here).</source>
        <extracomment>one: {text}</extracomment>
        <translation>
            <numerusform>{text}</numerusform>
            <numerusform>{text} ({n}-mal, zuerst hier).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/reading/musicxml_draft.py"/>
        <source>{n} more repairs are not listed.</source>
        <extracomment>one: 1 more repair is not listed.</extracomment>
        <translation>
            <numerusform>1 weitere Reparatur ist nicht aufgeführt.</numerusform>
            <numerusform>{n} weitere Reparaturen sind nicht aufgeführt.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file has {count} members; at most {most} are read.</source>
        <translation>Die gepackte Datei hat {count} Bestandteile; höchstens {most} werden gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file is broken: it cannot be unpacked.</source>
        <translation>Die gepackte Datei ist beschädigt: Sie lässt sich nicht entpacken.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file names “{path}” as its score, but does not hold it.</source>
        <translation>Die gepackte Datei nennt „{path}“ als ihre Partitur, enthält sie aber nicht.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file holds no MusicXML document.</source>
        <translation>Die gepackte Datei enthält kein MusicXML-Dokument.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file is locked with a password.</source>
        <translation>Die gepackte Datei ist mit einem Passwort gesperrt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file is packed in a way that MusicXML does not use.</source>
        <translation>Die gepackte Datei ist auf eine Art gepackt, die MusicXML nicht benutzt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/mxl.py"/>
        <source>The packed file unpacks to more than {most} megabytes; so much is not read.</source>
        <translation>Die gepackte Datei ergibt mehr als {most} Megabyte; so viel wird nicht gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A note without a length: it was left out.</source>
        <translation>Eine Note ohne Länge: Sie wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>Signs on grace notes were left out.</source>
        <translation>Zeichen auf Vorschlagsnoten wurden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A note without a duration: its note value was taken.</source>
        <translation>Eine Note ohne Dauer: Es gilt ihr Notenwert.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A note of more than {most} quarter notes: it was cut off there.</source>
        <translation>Eine Note von mehr als {most} Vierteln: Sie wurde dort abgeschnitten.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>Cue notes were read as rests.</source>
        <translation>Stichnoten wurden als Pausen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>Notes without a pitch were read as rests.</source>
        <translation>Noten ohne Tonhöhe wurden als Pausen gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A pitch that cannot be understood was read as a rest.</source>
        <translation>Eine unverständliche Tonhöhe wurde als Pause gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A pitch between the semitones, or altered by more than two, was moved to the nearest.</source>
        <translation>Eine Tonhöhe zwischen den Halbtönen oder um mehr als zwei verändert wurde auf die nächste verlegt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>An accidental and the pitch beside it do not agree: the pitch counts.</source>
        <translation>Ein Vorzeichen und die Tonhöhe daneben passen nicht zusammen: Die Tonhöhe gilt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A slur that neither starts nor stops was left out.</source>
        <translation>Ein Bindebogen, der weder beginnt noch endet, wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A note has both a down-bow and an up-bow: the first one counts.</source>
        <translation>Eine Note hat sowohl Abstrich als auch Aufstrich: Das erste Zeichen gilt.</translation>
    </message>
    <message>
        <location filename="../../core/reading/note_reader.py"/>
        <source>A fingering other than 0 to 4 was left out.</source>
        <translation>Ein anderer Fingersatz als 0 bis 4 wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/xml_tree.py"/>
        <source>The file has {size} megabytes; at most {most} are read.</source>
        <translation>Die Datei hat {size} Megabyte; höchstens {most} werden gelesen.</translation>
    </message>
    <message>
        <location filename="../../core/reading/xml_tree.py"/>
        <source>The file has more than {most} tags and attributes.</source>
        <translation>Die Datei hat mehr als {most} Marken und Attribute.</translation>
    </message>
    <message>
        <location filename="../../core/reading/xml_tree.py"/>
        <source>The file holds no XML element.</source>
        <translation>Die Datei enthält kein XML-Element.</translation>
    </message>
    <message>
        <location filename="../../core/reading/xml_tree.py"/>
        <source>The document type declares an entity (“{name}”), which is refused: a score has none.</source>
        <translation>Der Dokumenttyp erklärt eine Entity („{name}“), was abgelehnt wird: Eine Partitur hat keine.</translation>
    </message>
    <message>
        <location filename="../../core/reading/xml_tree.py"/>
        <source>The file is no complete XML document ({reason}).</source>
        <translation>Die Datei ist kein vollständiges XML-Dokument ({reason}).</translation>
    </message>
    <message>
        <location filename="../../core/remedies.py"/>
        <source>{first}, and {second}</source>
        <comment>two edits</comment>
        <translation>{first}; dazu {second}</translation>
    </message>
    <message>
        <location filename="../../core/remedies.py"/>
        <source>Slur notes {first} and {second} of {bars}</source>
        <translation>Note {first} und {second} in {bars} binden</translation>
    </message>
    <message>
        <location filename="../../core/remedies.py"/>
        <source>Part the slur between notes {first} and {second} of {bars}</source>
        <translation>Bindebogen zwischen Note {first} und {second} in {bars} trennen</translation>
    </message>
    <message>
        <location filename="../../core/remedies.py"/>
        <source>Part the slur into {bars}</source>
        <translation>Bindebogen in {bars} hinein trennen</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>three times</source>
        <translation>dreimal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>four times</source>
        <translation>viermal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>five times</source>
        <translation>fünfmal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>six times</source>
        <translation>sechsmal</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{before} ends {last} and begins {first} the {ordinal} time: {how}</source>
        <translation>{before} endet mit {last} und beginnt beim {ordinal} Mal mit {first}: {how}</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>back to the start: {before} ends {last}, {after} begins {first}: {how}</source>
        <translation>zurück zum Anfang: {before} endet mit {last}, {after} beginnt mit {first}: {how}</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{before} ends {last}, {after} begins {first}: {how}</source>
        <translation>{before} endet mit {last}, {after} beginnt mit {first}: {how}</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Next tune begins on the other bow</source>
        <translation>Nächstes Stück beginnt mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Strokes alternate on into the next tune, and it is turned round against how it was learned alone, every accent with it. Common practice, no source.</source>
        <translation>Die Striche wechseln in das nächste Stück hinein weiter, und es ist gegenüber dem allein gelernten umgedreht, mit ihm jede Betonung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Next tune begins with a retake</source>
        <translation>Nächstes Stück beginnt mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>The bow is lifted between two tunes, just where the fiddle leads the others: know that before. Common practice, no source.</source>
        <translation>Der Bogen wird zwischen zwei Stücken abgehoben, gerade da, wo die Geige die anderen führt: gut, das vorher zu wissen. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again, the tune is turned round, and every accent with it. Common practice, no source.</source>
        <translation>Noch einmal gespielt, ist das Stück umgedreht und mit ihm jede Betonung. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>The tune comes round because the bow is lifted: know that before you start again. Common practice, no source.</source>
        <translation>Das Stück geht auf, weil der Bogen abgehoben wird: gut zu wissen, bevor es von vorn losgeht. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Set comes round on the other bow</source>
        <translation>Set beginnt von vorn mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again from its first tune the set begins turned round; most sets end instead. Common practice, no source.</source>
        <translation>Vom ersten Stück an noch einmal gespielt, beginnt das Set umgedreht; die meisten Sets enden stattdessen. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Set comes round by a retake</source>
        <translation>Set beginnt von vorn mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again from its first tune the set begins with a lifted bow; most sets end instead. Common practice, no source.</source>
        <translation>Vom ersten Stück an noch einmal gespielt, beginnt das Set mit abgehobenem Bogen; die meisten Sets enden stattdessen. Allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>tune {number}</source>
        <translation>Stück {number}</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>“{title}” (tune {number})</source>
        <translation>„{title}“ (Stück {number})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>“{title}”</source>
        <translation>„{title}“</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/set_check.py"/>
        <source>{n} times</source>
        <extracomment>one: once</extracomment>
        <translation>
            <numerusform>einmal</numerusform>
            <numerusform>{n}-mal</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>the bow goes on by itself</source>
        <translation>der Bogen geht von selbst weiter</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>by a retake over a rest</source>
        <translation>durch einen Neuansatz über einer Pause</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>by a retake</source>
        <translation>durch einen Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>turned round {how_far} (alone it begins {alone})</source>
        <translation>umgedreht {how_far} (allein beginnt es mit {alone})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>a rest leaves room for a retake</source>
        <translation>eine Pause lässt Zeit für einen Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>to its end</source>
        <comment>how far a tune is turned round</comment>
        <translation>bis zum Schluss</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>up to {note}</source>
        <comment>how far a tune is turned round</comment>
        <translation>bis {note}</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins {first} after {before}, and is turned round {how_far} (alone it begins {alone})</source>
        <translation>{tune} beginnt nach {before} mit {first} und ist {how_far} umgedreht (allein beginnt es mit {alone})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins {first} after {before}, every time, and is turned round {how_far} (alone it begins {alone})</source>
        <translation>{tune} beginnt nach {before} jedes Mal mit {first} und ist {how_far} umgedreht (allein beginnt es mit {alone})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins {first} after {before}, {times}, and is turned round {how_far} (alone it begins {alone})</source>
        <translation>{tune} beginnt nach {before} {times} mit {first} und ist {how_far} umgedreht (allein beginnt es mit {alone})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins with a retake over a rest: {before} ends on {bow} and it begins with another</source>
        <translation>{tune} beginnt mit einem Neuansatz über einer Pause: {before} endet mit {bow}, und es beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins with a retake: {before} ends on {bow} and it begins with another</source>
        <translation>{tune} beginnt mit einem Neuansatz: {before} endet mit {bow}, und es beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} begins {first} {times}, and is turned round {how_far} (alone it begins {alone})</source>
        <translation>{tune} beginnt {times} mit {first} und ist {how_far} umgedreht (allein beginnt es mit {alone})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} takes a retake over a rest to begin {times}: it ends on {bow} and begins with another</source>
        <translation>{tune} braucht {times} einen Neuansatz über einer Pause: Es endet mit {bow} und beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>{tune} takes a retake to begin {times}: it ends on {bow} and begins with another</source>
        <translation>{tune} braucht {times} einen Neuansatz: Es endet mit {bow} und beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>played again from the start, the set begins {direction} (the first time {other})</source>
        <translation>von vorn gespielt beginnt das Set mit {direction} (beim ersten Mal mit {other})</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>played again from the start, the set takes a retake over a rest: it ends on {bow} and begins with another</source>
        <translation>von vorn gespielt braucht das Set einen Neuansatz über einer Pause: Es endet mit {bow} und beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>played again from the start, the set takes a retake: it ends on {bow} and begins with another</source>
        <translation>von vorn gespielt braucht das Set einen Neuansatz: Es endet mit {bow} und beginnt ebenso</translation>
    </message>
    <message>
        <location filename="../../core/set_remedies.py"/>
        <source>Take {note} {direction} the first time</source>
        <translation>{note} beim ersten Mal als {direction} nehmen</translation>
    </message>
    <message>
        <location filename="../../core/severity.py"/>
        <source>fault</source>
        <comment>severity</comment>
        <translation>Fehler</translation>
    </message>
    <message>
        <location filename="../../core/severity.py"/>
        <source>warning</source>
        <comment>severity</comment>
        <translation>Warnung</translation>
    </message>
    <message>
        <location filename="../../core/severity.py"/>
        <source>note</source>
        <comment>severity</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <location filename="../../core/sheet_plan.py"/>
        <source>Rest your arms every few minutes, keep shoulder and wrist loose, stop when anything hurts, and ask a teacher or a doctor if it does not pass.</source>
        <translation>Die Arme alle paar Minuten ausruhen, Schulter und Handgelenk locker halten, aufhören, wenn etwas schmerzt, und Lehrkraft oder Arzt fragen, wenn es nicht vergeht.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/bowed.py"/>
        <location filename="../../core/shelf/rank.py"/>
        <source>has no tune “{title}” any more; scan it again.</source>
        <translation>hat kein Stück „{title}“ mehr; neu einlesen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>The folder of the shelf {path} cannot be made: {reason}.</source>
        <translation>Der Ordner des Regals {path} lässt sich nicht anlegen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>its {table} hold what they cannot</source>
        <translation>sein „{table}“ enthält Unmögliches</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>it is another program&apos;s file</source>
        <translation>es ist die Datei eines anderen Programms</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>the file is gone or empty, but what you noted was written aside</source>
        <translation>die Datei ist verschwunden oder leer, aber die eigenen Vermerke wurden daneben gesichert</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>it holds no {table}</source>
        <translation>es enthält kein „{table}“</translation>
    </message>
    <message>
        <location filename="../../core/shelf/catalogue.py"/>
        <source>The shelf {path} cannot be used: {fault}.</source>
        <translation>Das Regal {path} lässt sich nicht benutzen: {fault}.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/errors.py"/>
        <source>Another program is writing to the shelf {path} and did not end; try again in a moment.</source>
        <translation>Ein anderes Programm schreibt in das Regal {path} und ist nicht fertig geworden; gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/errors.py"/>
        <source>The shelf {path} is damaged ({reason}); build it anew, what you noted is kept.</source>
        <translation>Das Regal {path} ist beschädigt ({reason}); neu aufbauen, die eigenen Vermerke bleiben erhalten.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/errors.py"/>
        <source>The shelf {path} was made by a later version of Bowbench (layout {found}, this version knows {known}); update Bowbench, or build the shelf anew, what you noted is kept.</source>
        <translation>Das Regal {path} stammt von einer neueren Version von Bowbench (Aufbau {found}, diese Version kennt {known}); Bowbench aktualisieren oder das Regal neu aufbauen, die eigenen Vermerke bleiben erhalten.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/errors.py"/>
        <source>This tune is not on the shelf any more; search again.</source>
        <translation>Dieses Stück steht nicht mehr im Regal; neu suchen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/lessons.py"/>
        <location filename="../../core/shelf/scan.py"/>
        <source>is larger than {size} MB and was left out.</source>
        <translation>ist größer als {size} MB und wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/lessons.py"/>
        <location filename="../../core/shelf/scan.py"/>
        <source>cannot be opened: {reason}.</source>
        <translation>lässt sich nicht öffnen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/letters.py"/>
        <source>“{text}” are no first notes: expected u, d and s for up, down and same, or note names A to G</source>
        <translation>„{text}“ sind keine Anfangsnoten: erwartet werden u, d und s für auf, ab und gleich oder Notennamen A bis G</translation>
    </message>
    <message>
        <location filename="../../core/shelf/letters.py"/>
        <source>To find first notes in any key, type two notes or more.</source>
        <translation>Um Anfangsnoten in jeder Tonart zu finden, zwei oder mehr Noten eingeben.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/query.py"/>
        <source>“{text}” is no key: expected a letter, perhaps with a mode: D, Edor, F# minor</source>
        <translation>„{text}“ ist keine Tonart: erwartet wird ein Buchstabe, etwa mit Tongeschlecht: D, Edor, F# minor</translation>
    </message>
    <message>
        <location filename="../../core/shelf/query.py"/>
        <source>“{text}” is no metre: expected figures such as 6/8, C, C| or free</source>
        <translation>„{text}“ ist keine Taktart: erwartet werden Ziffern wie 6/8, C, C| oder free</translation>
    </message>
    <message>
        <location filename="../../core/shelf/rebuild.py"/>
        <source>The shelf {path} cannot be set aside: {reason}.</source>
        <translation>Das Regal {path} lässt sich nicht beiseitelegen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>to do</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>at work</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>ready</source>
        <translation>fertig</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>taught</source>
        <translation>unterrichtet</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>resting</source>
        <translation>ruht</translation>
    </message>
    <message>
        <location filename="../../core/shelf/remarks.py"/>
        <source>“{status}” is no status: expected {known}, or none.</source>
        <translation>„{status}“ ist kein Stand: erwartet wird {known} oder keiner.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/scan.py"/>
        <source>is not there.</source>
        <translation>ist nicht da.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/scan.py"/>
        <source>cannot be looked into: {why}.</source>
        <translation>lässt sich nicht durchsehen: {why}.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/scan.py"/>
        <source>cannot be read ({name}: {storable}).</source>
        <translation>lässt sich nicht lesen ({name}: {storable}).</translation>
    </message>
    <message>
        <location filename="../../core/shelf/search.py"/>
        <source>“{order}” is no order: expected {known}</source>
        <translation>„{order}“ ist keine Reihenfolge: erwartet wird {known}</translation>
    </message>
    <message>
        <location filename="../../core/shelf/search.py"/>
        <source>“{status}” is no status: expected {known} or none</source>
        <translation>„{status}“ ist kein Stand: erwartet wird {known} oder none</translation>
    </message>
    <message>
        <location filename="../../core/sound/backing.py"/>
        <source>Bar {number}: “{text}” is no chord; the chord before it goes on.</source>
        <translation>Takt {number}: „{text}“ ist kein Akkord; der vorige klingt weiter.</translation>
    </message>
    <message>
        <location filename="../../core/sound/files.py"/>
        <source>There is nothing to play.</source>
        <translation>Es gibt nichts zu spielen.</translation>
    </message>
    <message>
        <location filename="../../core/sound/files.py"/>
        <source>“{suffix}” is no kind of sound file: expected {formats}</source>
        <translation>„{suffix}“ ist keine Art von Klangdatei: erwartet wird {formats}</translation>
    </message>
    <message>
        <location filename="../../core/sound/files.py"/>
        <source>Sound files cannot be written because libsndfile is missing: install the Python package soundfile, or write MIDI (.mid).</source>
        <translation>Klangdateien lassen sich nicht schreiben, weil libsndfile fehlt: das Python-Paket soundfile installieren oder MIDI (.mid) schreiben.</translation>
    </message>
    <message>
        <location filename="../../core/sound/files.py"/>
        <source>libsndfile could not write {kind}: {reason}.</source>
        <translation>libsndfile konnte {kind} nicht schreiben: {reason}.</translation>
    </message>
    <message>
        <location filename="../../core/sound/id3.py"/>
        <source>The words are too long for a tag.</source>
        <translation>Der Text ist zu lang für ein Etikett.</translation>
    </message>
    <message>
        <location filename="../../core/sound/ladder.py"/>
        <source>A ladder leads up from at least 10 to at most {most} percent, by steps of at least 1, at least once on each rung.</source>
        <translation>Eine Tempoleiter führt von mindestens 10 bis höchstens {most} Prozent, in Schritten von mindestens 1, auf jeder Sprosse mindestens einmal.</translation>
    </message>
    <message>
        <location filename="../../core/sound/ladder.py"/>
        <source>The ladder {ladder} has more than {most} playings.</source>
        <translation>Die Tempoleiter {ladder} hat mehr als {most} Durchläufe.</translation>
    </message>
    <message>
        <location filename="../../core/sound/ladder.py"/>
        <source>“{text}” is no ladder: expected percents such as 60-100, 60-100/4 or 60-100/4x2</source>
        <translation>„{text}“ ist keine Tempoleiter: erwartet werden Prozente wie 60-100, 60-100/4 oder 60-100/4x2</translation>
    </message>
    <message>
        <location filename="../../core/sound/loops.py"/>
        <source>The bars to be played must be at least one of 0 to {last}.</source>
        <translation>Zu spielen ist mindestens ein Takt von 0 bis {last}.</translation>
    </message>
    <message>
        <location filename="../../core/sound/loops.py"/>
        <source>Bars can be played 1 to {most} times in a row.</source>
        <translation>Takte lassen sich 1- bis {most}-mal nacheinander spielen.</translation>
    </message>
    <message>
        <location filename="../../core/sound/performance.py"/>
        <source>The speed must be {slowest} to {fastest} of the tempo.</source>
        <translation>Die Geschwindigkeit muss {slowest} bis {fastest} des Tempos sein.</translation>
    </message>
    <message>
        <location filename="../../core/sound/performance.py"/>
        <source>The swing must be 1 to {most}.</source>
        <translation>Der Swing muss 1 bis {most} sein.</translation>
    </message>
    <message>
        <location filename="../../core/sound/performance.py"/>
        <source>The bars counted in must be 0 to {most}.</source>
        <translation>Es lassen sich 0 bis {most} Takte einzählen.</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>“{name}” is no pitch: expected a letter, # or b, and an octave, such as G3 or C#4.</source>
        <translation>„{name}“ ist keine Tonhöhe: erwartet wird ein Buchstabe, # oder b und eine Oktave wie G3 oder C#4.</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>A tuning names at most {most} strings, not {count}.</source>
        <translation>Eine Stimmung nennt höchstens {most} Saiten, nicht {count}.</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>A tuning names two or more strings from low to high, not {strings}.</source>
        <translation>Eine Stimmung nennt zwei oder mehr Saiten von tief nach hoch, nicht {strings}.</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>standard</source>
        <translation>Standard</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>high bass</source>
        <translation>hoher Bass</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>cross tuning</source>
        <translation>Kreuzstimmung</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>cross tuning with a third</source>
        <translation>Kreuzstimmung mit Terz</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>low treble</source>
        <translation>tiefer Diskant</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>low cross tuning</source>
        <translation>tiefe Kreuzstimmung</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>all on D</source>
        <translation>alles auf D</translation>
    </message>
    <message>
        <location filename="../../core/strings.py"/>
        <source>“{text}” is no tuning: expected open strings from low to high, such as G3 D4 A4 E5.</source>
        <translation>„{text}“ ist keine Stimmung: erwartet werden leere Saiten von tief nach hoch wie G3 D4 A4 E5.</translation>
    </message>
    <message>
        <location filename="../../core/style/carry_on.py"/>
        <source>Nothing is slurred or marked yet: slur some bars first, or choose a style.</source>
        <translation>Noch ist nichts gebunden oder bezeichnet: zuerst einige Takte binden oder einen Stil wählen.</translation>
    </message>
    <message>
        <location filename="../../core/style/carry_on.py"/>
        <source>One marked bar is too little to tell a hand by: mark two or more, or let the style propose the tune.</source>
        <translation>Ein bezeichneter Takt ist zu wenig, um eine Hand zu erkennen: zwei oder mehr bezeichnen oder den Stil das Stück vorschlagen lassen.</translation>
    </message>
    <message>
        <location filename="../../core/style/carry_on.py"/>
        <source>Every bar is marked already: there is nothing to carry on.</source>
        <translation>Jeder Takt ist schon bezeichnet: Es gibt nichts fortzuführen.</translation>
    </message>
    <message>
        <location filename="../../core/style/forest.py"/>
        <source>To learn a style LightGBM is needed, which cannot be loaded here: {why}</source>
        <translation>Um einen Stil zu lernen, wird LightGBM gebraucht, das sich hier nicht laden lässt: {why}</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>notes of a triplet</source>
        <translation>Noten einer Triole</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>two equal notes</source>
        <translation>zwei gleiche Noten</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>a longer note and a shorter one</source>
        <translation>eine längere und eine kürzere Note</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>a shorter note and a longer one</source>
        <translation>eine kürzere und eine längere Note</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>falling by a step</source>
        <translation>stufenweise fallend</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>rising by a step</source>
        <translation>stufenweise steigend</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>falling by a leap</source>
        <translation>im Sprung fallend</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>rising by a leap</source>
        <translation>im Sprung steigend</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>on the same line or space</source>
        <translation>auf derselben Linie oder im selben Zwischenraum</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>over the bar line</source>
        <translation>über den Taktstrich</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>into the beat</source>
        <translation>in den Schlag hinein</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>from the beat</source>
        <translation>vom Schlag weg</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>off the beat</source>
        <translation>neben dem Schlag</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>Hardly ever slurred ({joined} of {seen} cases): {figure}, for example {bars}.</source>
        <translation>Kaum je gebunden ({joined} von {seen} Fällen): {figure}, zum Beispiel {bars}.</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>Slurred in {share} of the cases ({joined} of {seen}): {figure}, for example {bars}.</source>
        <translation>In {share} der Fälle gebunden ({joined} von {seen}): {figure}, zum Beispiel {bars}.</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>bar {bar}</source>
        <translation>Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>bars {bars}</source>
        <translation>Takt {bars}</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>{bars} of “{title}”</source>
        <translation>{bars} in „{title}“</translation>
    </message>
    <message>
        <location filename="../../core/style/habits.py"/>
        <source>; </source>
        <comment>between tunes</comment>
        <translation>; </translation>
    </message>
    <message>
        <location filename="../../core/style/learning.py"/>
        <source>There is too little to learn a style from (bowed lessons: {lessons}, slurred notes: {slurred}): at least {fewest_lessons} lessons with {fewest_slurred} slurred notes in all are needed.</source>
        <translation>Es gibt zu wenig, um einen Stil zu lernen (gestrichene Lektionen: {lessons}, gebundene Noten: {slurred}): Mindestens {fewest_lessons} Lektionen mit zusammen {fewest_slurred} gebundenen Noten werden gebraucht.</translation>
    </message>
    <message>
        <location filename="../../core/style/style.py"/>
        <source>This is no style: it is far too large.</source>
        <translation>Das ist kein Stil: Es ist viel zu groß.</translation>
    </message>
    <message>
        <location filename="../../core/style/style.py"/>
        <source>A style of the form {ours} was expected, not {found}: learn it again from the shelf.</source>
        <translation>Erwartet wurde ein Stil der Form {ours}, nicht {found}: noch einmal aus dem Regal lernen.</translation>
    </message>
    <message>
        <location filename="../../core/style/style.py"/>
        <source>This is no style: one saved by this program was expected.</source>
        <translation>Das ist kein Stil: Erwartet wurde einer, den dieses Programm gespeichert hat.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>first</source>
        <translation>1.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>second</source>
        <translation>2.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>third</source>
        <translation>3.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>fourth</source>
        <translation>4.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>fifth</source>
        <translation>5.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>sixth</source>
        <translation>6.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>seventh</source>
        <translation>7.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>eighth</source>
        <translation>8.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>ninth</source>
        <translation>9.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>tenth</source>
        <translation>10.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>eleventh</source>
        <translation>11.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>twelfth</source>
        <translation>12.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{row}, {word}</source>
        <comment>two of three or more in a row</comment>
        <translation>{row}, {word}</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{n}st</source>
        <translation>{n}.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{n}nd</source>
        <translation>{n}.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{n}rd</source>
        <translation>{n}.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{n}th</source>
        <translation>{n}.</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>.</source>
        <comment>decimal sign</comment>
        <translation>,</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{n}%</source>
        <comment>a share</comment>
        <translation>{n} %</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>small</source>
        <comment>first letter of a text that is put inside a sentence: “small”, or “as it is”</comment>
        <translation>as it is</translation>
    </message>
    <message>
        <location filename="../../core/translation.py"/>
        <source>{clause}.</source>
        <comment>a clause becomes a sentence</comment>
        <translation>{clause}.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Rules that are turned down are left out.</source>
        <translation>Leiser gestellte Regeln werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>What is set for reach and tuning is left out.</source>
        <translation>Einstellungen zu Bogenweg und Stimmung werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>What is set for printed sheets is left out.</source>
        <translation>Einstellungen für gedruckte Blätter werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Fields of other programs are left out.</source>
        <translation>Felder anderer Programme werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Credits for which ABC has no letter are written as notes: {kinds}.</source>
        <translation>Angaben, für die ABC keinen Buchstaben hat, werden als Anmerkungen geschrieben: {kinds}.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Ornaments for which ABC has no sign are left out: {signs}.</source>
        <translation>Verzierungen, für die ABC kein Zeichen hat, werden weggelassen: {signs}.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Bows fixed on held notes are left out.</source>
        <translation>Feste Strichzeichen auf gehaltenen Noten werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Bows fixed on one pass only are left out.</source>
        <translation>Nur in einem Durchgang feste Striche werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Retakes are written as fixed bows.</source>
        <translation>Neuansätze werden als feste Striche geschrieben.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Retakes that go another way on another pass are left out.</source>
        <translation>Neuansätze, die in einem anderen Durchgang anders gehen, werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Accent plans are left out.</source>
        <translation>Betonungspläne werden weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Some strokes go another way when the text is read again.</source>
        <translation>Manche Striche gehen anders, wenn der Text wieder gelesen wird.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Slurred notes with dots or lines of their own come back as hooked notes.</source>
        <translation>Gebundene Noten mit eigenen Punkten oder Strichen kommen als angehängte Noten zurück.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Some dots, lines or other signs on notes do not come back.</source>
        <translation>Manche Punkte, Striche oder andere Zeichen auf Noten kommen nicht zurück.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Some grace notes do not come back.</source>
        <translation>Manche Vorschlagsnoten kommen nicht zurück.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Some fingers do not come back.</source>
        <translation>Manche Fingersätze kommen nicht zurück.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>A name of a bowing does not come back.</source>
        <translation>Ein Name einer Strichfassung kommt nicht zurück.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>The order of parts is left out: each of them needs a letter.</source>
        <translation>Die Reihenfolge der Teile wird weggelassen: Jeder braucht einen Buchstaben.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>The tempo is rounded.</source>
        <translation>Das Tempo wird gerundet.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Chord symbols within a note move to its beginning, and what is no chord becomes words.</source>
        <translation>Akkordsymbole innerhalb einer Note rücken an ihren Anfang, und was kein Akkord ist, wird Text.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Words within a note move to its beginning, and those that name a jump or a sign are left out.</source>
        <translation>Text innerhalb einer Note rückt an ihren Anfang; was einen Sprung oder ein Zeichen nennt, wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Endings stop at double bar lines.</source>
        <translation>Klammern enden an Doppelstrichen.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Only the first coda is kept.</source>
        <translation>Nur die erste Coda bleibt.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Bars are numbered anew.</source>
        <translation>Die Takte werden neu nummeriert.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Where short bars begin is worked out anew.</source>
        <translation>Wo kurze Takte beginnen, wird neu bestimmt.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>A metre is written otherwise.</source>
        <translation>Eine Taktart wird anders geschrieben.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Names of parts are shortened.</source>
        <translation>Namen von Teilen werden gekürzt.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Endings and repeats are not all kept.</source>
        <translation>Nicht alle Klammern und Wiederholungen bleiben erhalten.</translation>
    </message>
    <message>
        <location filename="../../core/writing/abc_losses.py"/>
        <source>Notes are not all kept.</source>
        <translation>Nicht alle Noten bleiben erhalten.</translation>
    </message>
</context>
</TS>
