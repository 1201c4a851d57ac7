#!/bin/sh
# What the test printer does with a page: $1 is the page, the job's settings are in IPP_…
# A name, or the file $OUT/mood, with "fault" in it ends in a fault, one with "empty" runs out of labels, one with "cover"
# finds its cover open, one with "held" is printed when the file $OUT/release is there, within half a minute. What is printed
# stands in $OUT, and its name in $OUT/printed, a line for each label.
: "${OUT:?}"
name=$IPP_JOB_NAME
case $name$(cat "$OUT/mood" 2>/dev/null) in
*fault*)
    echo "ERROR: simulated fault" >&2
    exit 1
    ;;
*empty*)
    echo "STATE: +media-empty-error" >&2
    sleep 0.3
    exit 1
    ;;
*cover*)
    echo "STATE: +cover-open-error" >&2
    sleep 0.3
    exit 1
    ;;
*held*)
    : >"$OUT/$name.waiting"
    tries=1500
    until [ -e "$OUT/release" ]; do
        tries=$((tries - 1))
        if [ "$tries" = 0 ]; then exit 1; fi
        sleep 0.02
    done
    ;;
esac
env | sed -n '/^IPP_/p;/^CONTENT_TYPE=/p' >"$OUT/$name.settings"
cp "$1" "$OUT/$name.page"
echo "ATTR: job-impressions-completed=1" >&2
echo "$name" >>"$OUT/printed"
