<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Bowbench</name>
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
        <translation>&amp;Bindebogen</translation>
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
        <translation>Umdrehen</translation>
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
        <translation>Strich f&amp;reigeben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Let this stroke follow from the strokes before it again</source>
        <translation>Diesen Strich wieder aus den Strichen davor folgen lassen</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Free</source>
        <translation>Freigeben</translation>
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
        <source>Move &amp;up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move the bowing up in the list</source>
        <translation>Die Strichfassung in der Liste nach oben rücken</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move &amp;down</source>
        <translation>Nach u&amp;nten</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
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
        <source>&amp;Accents</source>
        <translation>Be&amp;tonungen</translation>
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
        <source>Lan&amp;guage</source>
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
        <location filename="../../app/pack_making.py"/>
        <source>the file was changed while it was packed; pack again</source>
        <translation>die Datei wurde beim Packen geändert; noch einmal packen</translation>
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
        <location filename="../../core/accent_plan.py"/>
        <source>on-beat</source>
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
        <source>by-phrase</source>
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
        <source>All notes under one slur go one way (Gehrkens, Essentials in Conducting, 1919, on bowing; rule B5): the slur or the mark must give way.</source>
        <translation>Alle Noten unter einem Bindebogen gehen in eine Richtung (Gehrkens, Essentials in Conducting, 1919, über Striche; Regel B5): Entweder der Bindebogen oder das Zeichen muss weichen.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Mark that says nothing new</source>
        <translation>Strichzeichen, das nichts Neues sagt</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The slur says the direction already, and a mark in the middle of it reads like a new stroke. Rule B5; common practice, no source.</source>
        <translation>Die Richtung folgt schon aus dem Bindebogen, und ein Zeichen mittendrin liest sich wie ein neuer Strich. Regel B5; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <location filename="../../core/set_check.py"/>
        <source>Tune comes round on the other bow</source>
        <translation>Stück beginnt von vorn mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Dance tunes are played over and over: what was down the first time is up the second, and every accent with it. Rule B10; common practice, no source.</source>
        <translation>Tanzstücke werden immer wieder von vorn gespielt: Was beim ersten Mal Abstrich war, ist beim zweiten Aufstrich, und mit ihm jede Betonung. Regel B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <location filename="../../core/set_check.py"/>
        <source>Tune comes round by a retake</source>
        <translation>Stück beginnt von vorn mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>It comes round as it began, because the bow is lifted: know that before you start again. Rules B4 and B10; common practice, no source.</source>
        <translation>Es beginnt wieder wie zuvor, weil der Bogen abgehoben wird: gut zu wissen, bevor es von vorn losgeht. Regeln B4 und B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Part comes round on the other bow</source>
        <translation>Teil beginnt beim Wiederholen mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Strokes alternate on through the repeat, and an odd number of them turns the part round: one slur more or less puts it right. Rule B10; common practice, no source.</source>
        <translation>Die Striche wechseln über die Wiederholung hinweg weiter, und eine ungerade Zahl davon dreht den Teil um: Ein Bindebogen mehr oder weniger bringt es in Ordnung. Regel B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Ending begins on the other bow</source>
        <translation>Klammer beginnt mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The endings stand in one place of the tune, and the hand expects one bow there. Rules B10 and B11; common practice, no source.</source>
        <translation>Die Klammern stehen an einer Stelle des Stücks, und die Hand erwartet dort einen bestimmten Strich. Regeln B10 und B11; allgemeine Praxis, ohne Quelle.</translation>
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
        <source>The plan accents a place where the bow strikes nothing: the tune rests there or holds a note (rule B3). Common practice, no source.</source>
        <translation>Der Plan betont eine Stelle, an der der Bogen nichts anstreicht: Dort steht eine Pause oder eine gehaltene Note (Regel B3). Allgemeine Praxis, ohne Quelle.</translation>
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
        <source>Inside a phrase the bow has to be lifted one time through and not another, which is hard to remember in a dance. Rules B4 and B10; common practice, no source.</source>
        <translation>Mitten in einer Phrase muss der Bogen in einem Durchgang abgehoben werden und in einem anderen nicht, was sich beim Tanzspiel schwer merken lässt. Regeln B4 und B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Retake</source>
        <translation>Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The bow is lifted to go the same way again: told, never forbidden. Rules B4 and B7; two down-bows in a row by retaking: Muffat, Florilegium Secundum (1698), preface.</source>
        <translation>Der Bogen wird abgehoben, um noch einmal in dieselbe Richtung zu gehen: ein Hinweis, kein Verbot. Regeln B4 und B7; zwei Abstriche nacheinander durch Neuansetzen: Muffat, Florilegium Secundum (1698), Vorrede.</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Slur over two equal notes</source>
        <translation>Bindebogen über zwei gleichen Noten</translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Under a slur no bow parts two equal notes, and they sound as one long note (rule B2). A hook parts them (rule B9), and so does a cut: common practice, no source.</source>
        <translation>Unter einem Bindebogen trennt kein Strich zwei gleiche Noten, und sie klingen wie eine lange (Regel B2). Anhängen trennt sie (Regel B9), ebenso ein Cut: allgemeine Praxis, ohne Quelle.</translation>
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
        <source>tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>frog</source>
        <translation>Frosch</translation>
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
        <location filename="../../core/checks/reach.py"/>
        <source>{count} quarters</source>
        <translation>{count} Viertel</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>{beat} = {number}</source>
        <comment>tempo</comment>
        <translation>{beat} = {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>{tempo}, usual for this dance</source>
        <translation>{tempo}, üblich für diesen Tanz</translation>
    </message>
    <message>
        <location filename="../../core/checks/reach.py"/>
        <source>{tempo}, assumed</source>
        <translation>{tempo}, angenommen</translation>
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
        <source>{n} retakes</source>
        <extracomment>one: 1 retake</extracomment>
        <translation>
            <numerusform>1 Neuansatz</numerusform>
            <numerusform>{n} Neuansätze</numerusform>
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
        <source>bar {number}</source>
        <translation>Takt {number}</translation>
    </message>
    <message>
        <location filename="../../core/checks/words.py"/>
        <source>the pick-up</source>
        <translation>Auftakt</translation>
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
    <message numerus="yes">
        <location filename="../../core/checks/words.py"/>
        <source>bars {numbers}</source>
        <extracomment>one: bar {numbers}</extracomment>
        <translation>
            <numerusform>Takt {numbers}</numerusform>
            <numerusform>Takt {numbers}</numerusform>
        </translation>
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
        <source>{note} of {bar}</source>
        <translation>{note} in {bar}</translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <location filename="../../core/planner/versions.py"/>
        <source>Separate bows</source>
        <translation>Einzelstriche</translation>
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
        <source>Sheet</source>
        <translation>Blatt</translation>
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
        <source>Tune</source>
        <translation>Stück</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Dance</source>
        <translation>Tanz</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Key</source>
        <translation>Tonart</translation>
    </message>
    <message>
        <location filename="../../core/pack/contents.py"/>
        <source>Bowings</source>
        <translation>Strichfassungen</translation>
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
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
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
        <location filename="../../core/set_check.py"/>
        <source>, </source>
        <comment>between parts of a sentence</comment>
        <translation>, </translation>
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
    <message>
        <location filename="../../core/planner/account.py"/>
        <source>; </source>
        <comment>between clauses</comment>
        <translation>; </translation>
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
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} accents missed</source>
        <extracomment>one: 1 accent missed</extracomment>
        <translation>
            <numerusform>1 Betonung verfehlt</numerusform>
            <numerusform>{n} Betonungen verfehlt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} breaks</source>
        <extracomment>one: 1 break</extracomment>
        <translation>
            <numerusform>1 Bruch</numerusform>
            <numerusform>{n} Brüche</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>every accent driven and everything that comes again bowed alike</source>
        <translation>jede Betonung getrieben und alles, was wiederkommt, gleich gestrichen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../core/planner/suitability.py"/>
        <source>{n} slurs</source>
        <extracomment>one: 1 slur</extracomment>
        <translation>
            <numerusform>1 Bindebogen</numerusform>
            <numerusform>{n} Bindebögen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../core/planner/suitability.py"/>
        <source>no slur at all</source>
        <translation>gar keinem Bindebogen</translation>
    </message>
    <message>
        <location filename="../../core/planner/tables.py"/>
        <source>The tune is too long to work out a bowing for all of it at once: choose some bars.</source>
        <translation>Das Stück ist zu lang, um alles auf einmal auszuarbeiten: einige Takte auswählen.</translation>
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
        <source>The text is indented: read as if not.</source>
        <translation>Der Text ist eingerückt: Er wird gelesen, als wäre er es nicht.</translation>
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
        <source>No tune found: expected ABC with X:1, T: a title, K: a key, and notes below.</source>
        <translation>Kein Stück gefunden: erwartet wird ABC mit X:1, T: einem Titel, K: einer Tonart und Noten darunter.</translation>
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
        <source>The tune has more than {most} bars: what follows is left out.</source>
        <translation>Das Stück hat mehr als {most} Takte: Was folgt, wird weggelassen.</translation>
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
        <source>“{name}”</source>
        <translation>„{name}“</translation>
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
        <source>Strokes alternate on into the next tune, and it is turned round against how it was learned alone, every accent with it. Rule B10; common practice, no source.</source>
        <translation>Die Striche wechseln in das nächste Stück hinein weiter, und es ist gegenüber dem allein gelernten umgedreht, mit ihm jede Betonung. Regel B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Next tune begins with a retake</source>
        <translation>Nächstes Stück beginnt mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>The bow is lifted between two tunes, just where the fiddle leads the others: know that before. Rules B4 and B7; common practice, no source.</source>
        <translation>Der Bogen wird zwischen zwei Stücken abgehoben, gerade da, wo die Geige die anderen führt: gut, das vorher zu wissen. Regeln B4 und B7; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again, the tune is turned round, and every accent with it. Rule B10; common practice, no source.</source>
        <translation>Noch einmal gespielt, ist das Stück umgedreht und mit ihm jede Betonung. Regel B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>The tune comes round because the bow is lifted: know that before you start again. Rules B4, B7 and B10; common practice, no source.</source>
        <translation>Das Stück geht auf, weil der Bogen abgehoben wird: gut zu wissen, bevor es von vorn losgeht. Regeln B4, B7 und B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Set comes round on the other bow</source>
        <translation>Set beginnt von vorn mit dem anderen Strich</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again from its first tune the set begins turned round; most sets end instead. Rule B10; common practice, no source.</source>
        <translation>Vom ersten Stück an noch einmal gespielt, beginnt das Set umgedreht; die meisten Sets enden stattdessen. Regel B10; allgemeine Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Set comes round by a retake</source>
        <translation>Set beginnt von vorn mit einem Neuansatz</translation>
    </message>
    <message>
        <location filename="../../core/set_check.py"/>
        <source>Played again from its first tune the set begins with a lifted bow; most sets end instead. Rules B4, B7 and B10; common practice, no source.</source>
        <translation>Vom ersten Stück an noch einmal gespielt, beginnt das Set mit abgehobenem Bogen; die meisten Sets enden stattdessen. Regeln B4, B7 und B10; allgemeine Praxis, ohne Quelle.</translation>
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
        <location filename="../../core/sheet_plan.py"/>
        <source>Rest your arms every few minutes, keep shoulder and wrist loose, stop when anything hurts, and ask a teacher or a doctor if it does not pass.</source>
        <translation>Die Arme alle paar Minuten ausruhen, Schulter und Handgelenk locker halten, aufhören, wenn etwas schmerzt, und Lehrkraft oder Arzt fragen, wenn es nicht vergeht.</translation>
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
        <source>no key</source>
        <translation>keine Tonart</translation>
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
        <location filename="../../core/shelf/rank.py"/>
        <source>has no tune “{title}” any more; scan it again.</source>
        <translation>hat kein Stück „{title}“ mehr; neu einlesen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/rank.py"/>
        <location filename="../../core/shelf/scan.py"/>
        <source>is larger than {size} MB and was left out.</source>
        <translation>ist größer als {size} MB und wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../core/shelf/rank.py"/>
        <location filename="../../core/shelf/scan.py"/>
        <source>cannot be opened: {reason}.</source>
        <translation>lässt sich nicht öffnen: {reason}.</translation>
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
        <source>“{text}” is no tuning: expected open strings from low to high, such as G3 D4 A4 E5.</source>
        <translation>„{text}“ ist keine Stimmung: erwartet werden leere Saiten von tief nach hoch wie G3 D4 A4 E5.</translation>
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
        <source>{row} and {word}</source>
        <comment>the end of a row</comment>
        <translation>{row} und {word}</translation>
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
        <source>{clause}.</source>
        <comment>a clause becomes a sentence</comment>
        <translation>{clause}.</translation>
    </message>
    <message>
        <location filename="../../core/tune_set.py"/>
        <source>A set holds at most {most} tunes.</source>
        <translation>Ein Set fasst höchstens {most} Stücke.</translation>
    </message>
    <message>
        <location filename="../../core/tune_set.py"/>
        <source>A tune of a set is played 1 to {most} times.</source>
        <translation>Ein Stück eines Sets wird 1- bis {most}-mal gespielt.</translation>
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
