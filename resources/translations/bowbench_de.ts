<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Bowbench</name>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this &amp;bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this &amp;phrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In this pa&amp;rt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>In the whole &amp;tune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>On the &amp;beat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>On the b&amp;ackbeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As each &amp;phrase does better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As &amp;drawn in this bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Fiddle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Backing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>C&amp;ount-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Let it be heard, or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open a lesson, a score or a tune book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Save the lesson under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Unsaved lessons…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lessons that were not saved when the program ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Print bowings of the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Set up s&amp;heet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Choose what is printed and see its pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Export as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Write the printed pages to a PDF file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Export as A&amp;BC…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Write all bowings of the lesson as a tune book in ABC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lesson pac&amp;k…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Make sheets and files of many lessons in one folder, with a zip of all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Close window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Close the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take back the last edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do again what was taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open &amp;pasted tune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open the tune (ABC or MusicXML text) that was copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Slur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Slur to the next note or separate the two; a selection becomes one slur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>S&amp;eparate bows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Give the note, or each selected note, a bow of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Separate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Hook to the next note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Same direction, with a stop between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Hook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Turn the bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Turn this stroke round and fix it so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix as &amp;down-bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix this stroke as a down-bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix as &amp;up-bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Fix this stroke as an up-bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Free the bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Let this stroke follow from the strokes before it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Retake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Lift and take the direction of the stroke before once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on every &amp;pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on every pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;1 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 1 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;2 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 2 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;3 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 3 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark holds on pass &amp;4 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The fixed mark holds on pass 4 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accent this place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Accent this place of the bar, or stop doing so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A cut: a short grace note of the next step up, or take it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A roll sign over the note, or take it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A turn sign over the note, or take it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Bowed triplet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Three quick strokes on the note, or take them away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Add a bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add a bowing with separate bows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Copy this bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add a copy of the bowing on the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Rename this bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Type another name for the bowing on the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move &amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move the bowing up in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Move the bowing down in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>De&amp;lete this bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Take the bowing on the page away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Next bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the next bowing on the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Previous bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the previous bowing on the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>C&amp;ompare bowings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show bowings under one another, line by line, with what tells them apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell the others &amp;from this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mark what tells the others from the bowing that is worked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Work out the best bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Work out the best bowing for the accents and show it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Mend &amp;from here on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Keep all up to the marked note and work out the rest afresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Planner beside the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show what the planner is set to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Which accents s&amp;uit this tune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Compare the accent plans on this tune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add &amp;starting versions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Add four bowings to start from: separate bows, on the beat, backbeat, smooth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Take the preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put the previewed bowing in the place of this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Ta&amp;ke the preview as a new bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Keep this bowing and add the previewed one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Drop the preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the bowing as it is again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Next finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the next thing that the check found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Previous finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the thing found before this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Mend the chosen finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do the first that the chosen finding offers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell its rule as a no&amp;te</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell what this rule finds as notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Do not tell its rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Do not tell in this lesson what this rule finds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell &amp;all rules as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Tell again what was turned down in this lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Bow and &amp;fiddle…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Set the length of the hair, bow speeds, tempo and strings that this lesson is checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Set of tunes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Put tunes together in a set and see how the bow goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the bar of the marked note on, or stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the &amp;beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play from the first bar that is to be played</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play these bars rou&amp;nd and round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play the bars of the selection, or that of the marked note, round and round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Round and round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Begin again at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>All b&amp;ars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play the whole tune with its repeats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>The set of &amp;tunes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play the set in the place of the open tune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play slower by five percent of the tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Faster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play faster by five percent of the tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Practice &amp;ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Play again and again, each time a little faster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Pla&amp;yer over the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show what is played, how fast, and the bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>S&amp;helf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Find a lesson or a tune of a book on your shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the page larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show the page smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Fit the width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As wide as the window has room for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Every stroke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A bow mark on every stroke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Where each &amp;bar begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>A bow mark on the first stroke of each bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Only where &amp;needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Only the bow marks needed to read the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accents under the staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show how each accented place is met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Bow from fro&amp;g to tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Show where on the hair each stroke lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>As the s&amp;ystem</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Light or dark as the system is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Dark ink on light paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Light ink on dark paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Keys and gestures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>What mouse and keys do on the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;About Bowbench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>What this program is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Ornaments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Accents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Bowing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Pla&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Bow marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/actions.py"/>
        <source>Compare &amp;with</source>
        <translation type="unfinished"></translation>
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
        <location filename="../../core/check.py"/>
        <source>Mark against a slur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>All notes under one slur go one way (Gehrkens, Essentials in Conducting, 1919, on bowing; rule B5): the slur or the mark must give way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Mark that says nothing new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The slur says the direction already, and a mark in the middle of it reads like a new stroke. Rule B5; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Tune comes round on the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Dance tunes are played over and over: what was down the first time is up the second, and every accent with it. Rule B10; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Tune comes round by a retake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>It comes round as it began, because the bow is lifted: know that before you start again. Rules B4 and B10; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Part comes round on the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Strokes alternate on through the repeat, and an odd number of them turns the part round: one slur more or less puts it right. Rule B10; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Ending begins on the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The endings stand in one place of the tune, and the hand expects one bow there. Rules B10 and B11; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Phrase comes again on the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The same notes are learned once where the bow does the same each time. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Phrase comes again slurred differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The same notes have other slurs here: a variation, or an oversight? Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Like phrase on the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>What is built alike is easier to learn bowed alike; no more than a suggestion. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Like phrase slurred differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>What is built alike is easier to learn slurred alike; no more than a suggestion. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent on an up-bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The strong beats (L. Mozart, Violinschule, 1756, XII §9) are taken down (the same, IV §3, from memory; Schroeder, Handbook of Violin Playing, about 1889). Backbeat: common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent inside a slur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Of notes under one slur the first is louder and the rest fade (L. Mozart, Violinschule, 1756, XII §10): an accent inside is not heard as one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accent where nothing is struck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The plan accents a place where the bow strikes nothing: the tune rests there or holds a note (rule B3). Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Accents phrase by phrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Each phrase of four bars counts as accented on the beat or on the backbeat, whichever more down-bows meet. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Retake on some passes only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Inside a phrase the bow has to be lifted one time through and not another, which is hard to remember in a dance. Rules B4 and B10; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Retake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The bow is lifted to go the same way again: told, never forbidden. Rules B4 and B7; two down-bows in a row by retaking: Muffat, Florilegium Secundum (1698), preface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Slur over two equal notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Under a slur no bow parts two equal notes, and they sound as one long note (rule B2). A hook parts them (rule B9), and so does a cut: common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Long stroke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>More than eight notes, or a bar and a half, on one bow leave little bow for each. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Stroke too long for the bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>About 65 cm of hair (instrument handbooks, from memory) at about 5 cm/s, the slowest bow speed of ordinary playing (Askenfelt, JASA 80, 1986, 1007, from memory).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Bow runs out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Down-bows go from nut to point, up-bows from point to nut (Gehrkens, Essentials in Conducting, 1919, on bowing); bow speeds roughly 5 to 100 cm/s (Askenfelt, JASA 80, 1986, 1007, from memory).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Bow drifts to one end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Saunders, Self-Instructing School for the Violin (1847), pp. 16–17: a single note needs as much bow as the three slurred before it, else the bow runs out. Told beyond that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>Slur leaps over a string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/check.py"/>
        <source>The bow touches neighbouring strings only without being lifted; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Separate bows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Give every note a bow of its own, all of them equally long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Down on the beat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Begin a down-bow on every beat that is accented, with as few slurs as it takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Down on the backbeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Begin a down-bow on every backbeat, with as few slurs as it takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Long bows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Play two and three notes to a bow, and still begin a down-bow on every accented beat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>In pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur the running notes two by two, each pair beginning with the beat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Pairs across the beat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur the last note before each beat to the first note on it, and over the bar line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Three and one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur three running notes from the beat on and give what is left a bow of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>One and three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Give the note on the beat a bow of its own and slur those behind it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Threes over the bar line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Slur three notes over the bar line, so that the backbeat has the down-bow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>On the other bow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../core/drills.py"/>
        <source>Play the bowing that you know, but begin on the other bow: all down-bows are up-bows now.</source>
        <translation type="unfinished"></translation>
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
</context>
</TS>
