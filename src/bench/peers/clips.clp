; The verdicts into a file, then as many silent passes over all plans as PASSES says.
(deffunction go ()
  (open "clips.txt" verdicts "w")
  (all verdicts)
  (close verdicts)
  (loop-for-count PASSES (all nil)))
(go)
(exit)
